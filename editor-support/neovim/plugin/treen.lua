-- Treen for Neovim. Copy this file to ~/.config/nvim/plugin/treen.lua; nothing else is needed.
-- The server is `treen lsp`; where treen is not on the PATH, say so in init.lua:
--     vim.g.treen_launcher = '/path/to/treen'
-- Made for Neovim 0.10 and newer; from 0.7 on it works without inlay hints and colours from the server.

if vim.g.loaded_treen then
  return
end
vim.g.loaded_treen = true

--- The folder of the project a file belongs to: the nearest one above it that is under version control, else its own.
local function project_of(file)
  local folder = vim.fn.fnamemodify(file, ':p:h')
  local git = vim.fn.finddir('.git', folder .. ';')
  if git == '' then
    git = vim.fn.findfile('.git', folder .. ';') -- in a linked work tree it is a file
  end
  if git == '' then
    return folder
  end
  return vim.fn.fnamemodify(git, vim.fn.isdirectory(git) == 1 and ':p:h:h' or ':p:h')
end

local function configuration(root)
  return {
    name = 'treen',
    cmd = { vim.g.treen_launcher or 'treen', 'lsp' },
    root_dir = root,
    workspace_folders = { { uri = vim.uri_from_fname(root), name = vim.fn.fnamemodify(root, ':t') } },
  }
end

--- One server a project, shared by its files.
local start
if vim.lsp.start then
  start = function(buffer, root)
    vim.lsp.start(configuration(root), { bufnr = buffer })
  end
else
  local running = {} -- by root folder
  start = function(buffer, root)
    if not running[root] then
      local config = configuration(root)
      config.on_exit = function()
        running[root] = nil
      end
      running[root] = vim.lsp.start_client(config)
    end
    if running[root] then
      vim.lsp.buf_attach_client(buffer, running[root])
    end
  end
end

local group = vim.api.nvim_create_augroup('treen', {})

vim.api.nvim_create_autocmd({ 'BufRead', 'BufNewFile' }, {
  group = group,
  pattern = '*.treen',
  callback = function()
    vim.bo.filetype = 'treen'
  end,
})

vim.api.nvim_create_autocmd('FileType', {
  group = group,
  pattern = 'treen',
  callback = function(event)
    local buffer = event.buf
    vim.bo[buffer].commentstring = '// %s'
    vim.bo[buffer].comments = ':///,://'
    vim.bo[buffer].expandtab = true
    vim.bo[buffer].shiftwidth = 2
    vim.bo[buffer].smartindent = true
    if vim.fn.executable(vim.g.treen_launcher or 'treen') == 0 then
      vim.notify_once('Treen: there is no treen on the PATH; set vim.g.treen_launcher', vim.log.levels.WARN)
      return
    end
    start(buffer, project_of(vim.api.nvim_buf_get_name(buffer)))
  end,
})

-- What Neovim does not switch on by itself. LspAttach came with 0.8; older versions go without.
if vim.fn.exists('##LspAttach') == 1 then
  vim.api.nvim_create_autocmd('LspAttach', {
    group = group,
    callback = function(event)
      local client = vim.lsp.get_client_by_id(event.data.client_id)
      if client and client.name == 'treen' and vim.lsp.inlay_hint and client.server_capabilities.inlayHintProvider then
        vim.lsp.inlay_hint.enable(true, { bufnr = event.buf })
      end
    end,
  })
end
