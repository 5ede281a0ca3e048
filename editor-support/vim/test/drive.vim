" Drives the Vim it is loaded into, as a user would, and reads what ALE shows out of its state.
let s:passed = 0
let s:failed = 0
function! s:Check(name, ok, seen) abort
  if a:ok
    let s:passed += 1
    call writefile(['  ok    ' . a:name], $TREEN_SAID, 'a')
  else
    let s:failed += 1
    call writefile(['  FAIL  ' . a:name, '        seen: ' . string(a:seen)], $TREEN_SAID, 'a')
  endif
endfunction
function! s:Await(condition) abort
  for l:i in range(600)
    if eval(a:condition)
      return 1
    endif
    sleep 50m
  endfor
  return 0
endfunction
function! s:Codes() abort
  return map(copy(ale#engine#GetLoclist(bufnr(''))), {_, each -> get(each, 'code', '') . ': ' . each.text})
endfunction
function! Tight() abort
  return match(s:Codes(), 'panel-tight') >= 0
endfunction
function! Clean() abort
  return empty(ale#engine#GetLoclist(bufnr('')))
endfunction
function! Offered() abort
  return getline('.') !~# 'gap 0\.2'
endfunction

try
  call s:Check('the file is known as Treen', &filetype ==# 'treen', &filetype)
  call search('gap auto')
  call setline('.', substitute(getline('.'), 'gap auto', 'gap 0.2', ''))
  ALELint
  call s:Check('panel-tight is reported', s:Await('Tight()'), s:Codes())
  let s:found = filter(copy(ale#engine#GetLoclist(bufnr(''))), {_, each -> get(each, 'code', '') ==# 'panel-tight'})
  if !empty(s:found)
    call s:Check('at the line of the gap', s:found[0].lnum == line('.'), s:found)
  endif
  if !empty($SCREEN)
    set lines=46 columns=150
    call search('gap 0\.2')
    ALEDetail
    wincmd p
    redraw!
    call writefile(map(range(1, &lines), {_, row -> substitute(join(map(range(1, &columns),
          \ {_, column -> screenstring(row, column)}), ''), '\s\+$', '', '')}), $SCREEN)
    only
  endif
  undo
  ALELint
  call s:Check('and goes away when the line is as it was', s:Await('Clean()'), s:Codes())
  call s:Check('board has the colour of a statement',
        \ synIDattr(synID(search('^board'), 1, 1), 'name') ==# 'treenStatement', synIDattr(synID(line('.'), 1, 1), 'name'))
catch
  call s:Check('nothing is thrown', 0, v:exception . ' at ' . v:throwpoint)
endtry
call writefile(['vim ' . v:version . ': ' . s:passed . ' passed, ' . s:failed . ' failed'], $TREEN_SAID, 'a')
execute s:failed == 0 && s:passed > 0 ? 'qall!' : 'cquit'
