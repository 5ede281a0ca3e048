package dev.treen.lsp;

import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What happens to files outside the open ones. */
final class WorkspaceFiles implements WorkspaceService {
    private final TextService text;

    WorkspaceFiles(TextService text) {
        this.text = text;
    }

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to set.
    }

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        text.allAfresh();
    }
}
