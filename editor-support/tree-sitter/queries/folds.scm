(block) @fold
(comment) @fold
