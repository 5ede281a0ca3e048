package dev.treen.lsp;

import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What happens to files outside the open ones. */
final class WorkspaceFiles implements WorkspaceService {
    private final Desk desk;

    WorkspaceFiles(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to set.
    }

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        desk.allAfresh();
    }
}
