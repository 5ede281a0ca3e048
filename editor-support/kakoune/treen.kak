# Treen for Kakoune. Copy this file to ~/.config/kak/autoload/; Kakoune's own files must be loaded too.
# :lint shows the findings of the file as it stands in the buffer.

hook global BufCreate .*[.]treen %{ set-option buffer filetype treen }

hook global WinSetOption filetype=treen %{
    require-module treen
    set-option window lintcmd %{ run() { treen check "$1" | awk '
        /^(error|warning|note) / { kind = $1 == "error" ? "error" : "warning"; code = $2; $1 = $2 = ""; text = $0; next }
        text != "" && match($0, /:[0-9]+:[0-9]+$/) { print substr($0, 3) ": " kind ":" text " (" code ")"; text = "" }'; }; run }
    set-option buffer comment_line '//'
    set-option buffer comment_block_begin '/*'
    set-option buffer comment_block_end '*/'
    set-option buffer indentwidth 2
}

hook -group treen-highlight global WinSetOption filetype=treen %{
    add-highlighter window/treen ref treen
    hook -once -always window WinSetOption filetype=.* %{ remove-highlighter window/treen }
}

provide-module treen %§
add-highlighter shared/treen regions
add-highlighter shared/treen/code default-region group
add-highlighter shared/treen/text region '"' (?<!\\)(\\\\)*(?:"|$) fill string
add-highlighter shared/treen/doc region '///' '$' fill documentation
add-highlighter shared/treen/line region '//' '$' fill comment
add-highlighter shared/treen/block region '/\*' '\*/' fill comment
add-highlighter shared/treen/code/ regex '(?:^|[;{])\h*(\w+)\b' 1:variable
add-highlighter shared/treen/code/ regex '(?:^|[;{}])\h*(project|use|board|sheet|part|joint|accept|measured|holds|pattern|param|repeat|let|require|when|else)\b' 1:keyword
add-highlighter shared/treen/code/ regex '\b(board|sheet|part|pattern)\h+(\w+)' 2:type
add-highlighter shared/treen/code/ regex '\b(and|or|not|then|because|overall|into|like)\b' 1:operator
add-highlighter shared/treen/code/ regex '\b(true|false|auto)\b' 1:value
add-highlighter shared/treen/code/ regex '\b\d+(?:[./]\d+)?(?:mm|cm|m|in|ft|deg[CF]?|%|kg|g|lb|oz|min|h|day|d)?' 0:value
§
