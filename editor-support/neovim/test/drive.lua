-- Drives the Neovim it is loaded into, as a user would, and reads what it shows out of its own state.
-- Waits are for events of the editor and answers of the server, each with a limit; nothing waits for time to pass.

local limit = 30000 -- milliseconds; the first answer includes the start of the server
local passed, failed, skipped = 0, 0, 0

local function say(...)
  io.stdout:write(string.format(...), '\n')
  io.stdout:flush()
end

local function finish()
  local version = vim.version()
  say('neovim %d.%d.%d: %d passed, %d failed, %d skipped', version.major, version.minor, version.patch, passed, failed, skipped)
  vim.cmd(failed == 0 and passed > 0 and 'qall!' or 'cquit 1')
end

local function check(name, ok, seen)
  if ok then
    passed = passed + 1
    say('  ok    %s', name)
  else
    failed = failed + 1
    say('  FAIL  %s', name)
    say('        seen: %s', type(seen) == 'string' and seen or vim.inspect(seen))
  end
  return ok
end

local function skip(name, why)
  skipped = skipped + 1
  say('  skip  %s (%s)', name, why)
end

--- Without this nothing further can be learnt.
local function must(name, ok, seen)
  if not check(name, ok, seen) then
    finish()
    error('stopped')
  end
end

--- What the server published last, by file; Neovim keeps the diagnostics, but not that there was an empty list.
local published = 0
local publish = vim.lsp.handlers['textDocument/publishDiagnostics']
vim.lsp.handlers['textDocument/publishDiagnostics'] = function(...)
  published = published + 1
  return publish(...)
end

local function codes()
  return vim.tbl_map(function(each)
    -- Neovim 0.7 keeps the code only in what it passes on from the server.
    return tostring(each.code or vim.tbl_get(each, 'user_data', 'lsp', 'code') or '?') .. ': ' .. each.message
  end, vim.diagnostic.get(0))
end

local function diagnostic(code)
  for _, each in ipairs(vim.diagnostic.get(0)) do
    if (each.code or vim.tbl_get(each, 'user_data', 'lsp', 'code')) == code then
      return each
    end
  end
end

--- The server's answer to a request at the cursor.
local function ask(method, more)
  local params = vim.tbl_extend('force', vim.lsp.util.make_position_params(0, 'utf-16'), more or {})
  local answers = vim.lsp.buf_request_sync(0, method, params, limit)
  for _, answer in pairs(answers or {}) do
    if answer.error then
      return nil, answer.error
    end
    return answer.result
  end
end

local function cursor_at(pattern)
  vim.fn.cursor(1, 1)
  return vim.fn.search(pattern, 'cW') > 0
end

local function flat(symbols, into)
  for _, each in ipairs(symbols or {}) do
    table.insert(into, each.name)
    flat(each.children, into)
  end
  return into
end

---------------------------------------------------------------------------------------------------------------------

local clients = vim.lsp.get_clients or vim.lsp.get_active_clients

must('the file is known as Treen', vim.bo.filetype == 'treen', vim.bo.filetype)
must('the server starts', vim.wait(limit, function()
  local client = clients()[1]
  return client ~= nil and client.name == 'treen' and client.initialized == true
end, 10), vim.tbl_map(function(c) return c.name end, clients()))

must('the server speaks about the file once it is opened', vim.wait(limit, function() return published > 0 end, 10), published)
must('the example has nothing to complain about', #vim.diagnostic.get(0) == 0, codes())

local symbols = flat(ask('textDocument/documentSymbol', { position = vim.NIL }), {})
check('symbols: the parts are listed', vim.tbl_contains(symbols, 'base') or vim.tbl_contains(symbols, 'caddy'), symbols)

cursor_at([[\v<species>\s+\zs\w]])
vim.lsp.buf.hover()
local hovered
vim.wait(limit, function()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= '' then
      hovered = table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), '\n')
    end
  end
  return hovered ~= nil
end, 10)
check('hover: a floating window explains the word under the cursor', hovered ~= nil and #hovered > 0, hovered)

cursor_at([[\v<board>\s]])
vim.cmd('normal! o  ')
local completed, problem = ask('textDocument/completion')
local labels = vim.tbl_map(function(each) return each.label end, completed and completed.items or completed or {})
vim.cmd('undo')
check('completion: a board is offered the properties that it lacks',
  vim.tbl_contains(labels, 'knot') and not vim.tbl_contains(labels, 'species'),
  problem or labels)

if vim.lsp.inlay_hint then
  local hints = {}
  vim.wait(limit, function()
    hints = vim.lsp.inlay_hint.get({ bufnr = 0 })
    return #hints > 0
  end, 10)
  check('inlay hints: they are on, and there are some', vim.lsp.inlay_hint.is_enabled({ bufnr = 0 }) and #hints > 0, hints)
else
  skip('inlay hints', 'this Neovim has none')
end

-- The fault: a panel without room to swell.
local gap = [=[\v<groove>.*<gap>\s+\zs[0-9a-z./]+]=]
must('the groove of the example has a gap to spoil', cursor_at(gap), vim.fn.getline(1, '$'))
local line = vim.fn.line('.')
local before = vim.fn.getline(line)
vim.fn.setreg('/', gap)
vim.cmd('normal! cgn0.2') -- typed, as a user would: the server sees a change of a few characters
local spoilt = vim.fn.getline(line)
must('the gap is now 0.2', spoilt:match('gap%s+0%.2') ~= nil, spoilt)
must('panel-tight is reported', vim.wait(limit, function() return diagnostic('panel-tight') ~= nil end, 10), codes())
local found = diagnostic('panel-tight')
check('it is reported once', #vim.tbl_filter(function(each) return each:match('^panel%-tight:') end, codes()) == 1, codes())
check('it is at the line of the gap', found.lnum + 1 == line, found)
check('it says what is missing, in numbers', found.message:match('%d') ~= nil, found.message)

-- What is on the screen, for the looks: SCREEN=file keeps it.
if os.getenv('SCREEN') then
  vim.o.columns, vim.o.lines = 150, 46
  vim.o.termguicolors = true
  vim.fn.cursor(found.lnum + 1, found.col + 1)
  local _, window = vim.diagnostic.open_float({ scope = 'line' })
  vim.wait(1500) -- hints and messages are drawn when the editor has nothing else to do
  vim.cmd('redraw!')
  local rows = {}
  for row = 1, vim.o.lines do
    local cells = {}
    for column = 1, vim.o.columns do
      cells[column] = vim.fn.screenstring(row, column)
    end
    rows[row] = (table.concat(cells):gsub('%s+$', ''))
  end
  vim.fn.writefile(rows, os.getenv('SCREEN'))
  vim.api.nvim_win_close(window, true)
end

-- The fix, through the menu that a user would choose from.
vim.fn.cursor(found.lnum + 1, found.col + 1)
local offered
vim.ui.select = function(items, options, choose)
  offered = vim.tbl_map(options.format_item or tostring, items)
  for index, item in ipairs(items) do
    if offered[index]:lower():match('gap') then
      return choose(item, index)
    end
  end
  choose(nil, nil)
end
vim.lsp.buf.code_action()
must('a fix is offered', vim.wait(limit, function() return offered ~= nil end, 10), 'no menu of fixes')
must('applied, it changes the gap', vim.wait(limit, function() return vim.fn.getline(line) ~= spoilt end, 10), offered)
check('it changes nothing else in the line',
  vim.fn.getline(line):gsub('gap%s+[%w./]+', 'gap') == before:gsub('gap%s+[%w./]+', 'gap'), vim.fn.getline(line))
check('and the finding goes away', vim.wait(limit, function() return diagnostic('panel-tight') == nil end, 10), codes())
check('nothing else is wrong', #vim.diagnostic.get(0) == 0, codes())

finish()
