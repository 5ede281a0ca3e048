" Treen for Vim with the ALE plug-in. Copy this file to ~/.vim/plugin/treen.vim.
" The server is `treen lsp`; where treen is not on the PATH: let g:treen_launcher = '/path/to/treen'

if exists('g:loaded_treen')
  finish
endif
let g:loaded_treen = 1

augroup treen
  autocmd!
  autocmd BufRead,BufNewFile *.treen setfiletype treen
  autocmd FileType treen setlocal commentstring=//\ %s comments=:///,:// expandtab shiftwidth=2 smartindent
  autocmd FileType treen setlocal omnifunc=ale#completion#OmniFunc
  autocmd Syntax treen call s:colours()
augroup END

function! s:colours() abort
  syntax case match
  syntax match treenName /\<\h\w*\>/
  syntax match treenProperty /\%(^\|[;{]\)\s*\zs\h\w*\>/
  syntax match treenStatement /\%(^\|[;{}]\)\s*\zs\%(project\|use\|board\|sheet\|part\|joint\|accept\|measured\|holds\|pattern\|param\|repeat\|let\|require\|when\|else\)\>/
  syntax keyword treenOperator and or not then because overall like into
  syntax keyword treenConstant true false auto
  syntax match treenNumber /\<\d\+\%([./]\d\+\)\?\%(mm\|cm\|m\|in\|ft\|deg\%([CF]\)\?\|%\|kg\|g\|lb\|oz\|min\|h\|day\|d\)\?/
  syntax region treenText start=/"/ skip=/\\./ end=/"/ oneline
  syntax match treenComment "//.*$"
  syntax region treenComment start="/\*" end="\*/"
  highlight default link treenProperty Identifier
  highlight default link treenStatement Statement
  highlight default link treenOperator Operator
  highlight default link treenConstant Constant
  highlight default link treenNumber Number
  highlight default link treenText String
  highlight default link treenComment Comment
endfunction

function! TreenProject(buffer) abort
  let l:git = finddir('.git', fnamemodify(bufname(a:buffer), ':p:h') . ';')
  return l:git ==# '' ? fnamemodify(bufname(a:buffer), ':p:h') : fnamemodify(l:git, ':p:h:h')
endfunction

" ALE may come later than this file.
autocmd treen VimEnter,FileType * ++nested call s:define()
function! s:define() abort
  if exists('*ale#linter#Define') || !empty(globpath(&runtimepath, 'autoload/ale/linter.vim'))
    if !exists('s:defined')
      let s:defined = 1
      call ale#linter#Define('treen', {'name': 'treen', 'lsp': 'stdio',
            \ 'executable': get(g:, 'treen_launcher', 'treen'), 'command': '%e lsp',
            \ 'project_root': function('TreenProject')})
    endif
  endif
endfunction
