(code) @code
