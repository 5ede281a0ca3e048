; A pattern sees the names of its file; what is declared in it, and the counter of a repeat, stay within.
(file) @local.scope
(pattern) @local.scope
(repeat) @local.scope

(let name: (name) @local.definition)
(board name: (name) @local.definition)
(part name: (name) @local.definition)
(pattern name: (name) @local.definition)
(joint alias: (name) @local.definition)
(use alias: (name) @local.definition)
(param name: (name) @local.definition)
(repeat name: (name) @local.definition)

(reference) @local.reference
