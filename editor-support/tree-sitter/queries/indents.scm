(block) @indent.begin
(group) @indent.begin
(call) @indent.begin
(block "}" @indent.branch @indent.end)
(group ")" @indent.branch @indent.end)
(call ")" @indent.branch @indent.end)
(comment) @indent.auto
(ERROR "{" @indent.begin)
