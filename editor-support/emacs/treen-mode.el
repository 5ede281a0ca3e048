;;; treen-mode.el --- Wooden projects as plain text  -*- lexical-binding: t; -*-

;; Colours, comments and indentation for .treen files; everything else comes from the server through eglot.
;; In the init file:
;;   (load "/path/to/treen-mode.el")
;;   (add-hook 'treen-mode-hook #'eglot-ensure)

;;; Code:

(require 'eglot)

(defgroup treen nil "Wooden projects as plain text." :group 'languages)

(defcustom treen-launcher "treen" "The program whose `lsp' command is the server." :type 'string)

(defvar treen-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?_ "w" table)
    (modify-syntax-entry ?/ ". 124b" table)
    (modify-syntax-entry ?* ". 23" table)
    (modify-syntax-entry ?\n "> b" table)
    (modify-syntax-entry ?\" "\"" table)
    table))

(defconst treen--statements
  '("project" "use" "board" "sheet" "part" "joint" "accept" "measured" "holds" "pattern" "param" "repeat" "let"
    "require" "when" "else"))

(defvar treen-font-lock
  `((,(concat "\\(?:^\\|[;{}]\\)\\s-*\\(" (regexp-opt treen--statements) "\\)\\_>") 1 font-lock-keyword-face)
    ("\\_<\\(?:and\\|or\\|not\\|then\\|because\\|overall\\)\\_>" . font-lock-keyword-face)
    ("\\_<\\(?:true\\|false\\|auto\\)\\_>" . font-lock-constant-face)
    ("\\_<\\(?:board\\|sheet\\|part\\|pattern\\)\\s-+\\(\\w+\\)" 1 font-lock-type-face)
    ("\\_<joint\\s-+\\(\\w+\\)" 1 font-lock-function-name-face)
    ("\\_<\\(?:let\\|param\\)\\s-+\\(\\w+\\)" 1 font-lock-variable-name-face)
    ("\\(?:^\\|[;{]\\)\\s-*\\(\\w+\\)\\_>" 1 font-lock-variable-name-face)))

(defun treen-indent-line ()
  "Indent by two for each block that is open."
  (let* ((state (save-excursion (syntax-ppss (line-beginning-position))))
         (depth (car state)))
    (unless (nth 8 state)
      (save-excursion
        (back-to-indentation)
        (when (looking-at "[])}]") (setq depth (1- depth)))
        (indent-line-to (* 2 (max 0 depth))))
      (when (< (current-column) (current-indentation)) (back-to-indentation)))))

;;;###autoload
(define-derived-mode treen-mode prog-mode "Treen"
  "Major mode for wooden projects."
  (setq-local comment-start "// " comment-end "" comment-start-skip "\\(?://+\\|/\\*+\\)\\s-*"
              indent-line-function #'treen-indent-line indent-tabs-mode nil
              font-lock-defaults '(treen-font-lock)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.treen\\'" . treen-mode))

(add-to-list 'eglot-server-programs
             (cons 'treen-mode (lambda (&rest _) (list treen-launcher "lsp"))))

(provide 'treen-mode)
;;; treen-mode.el ends here
