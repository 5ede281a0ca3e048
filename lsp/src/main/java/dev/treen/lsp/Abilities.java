package dev.treen.lsp;

import dev.treen.lsp.feature.Colours;
import dev.treen.lsp.feature.Commands;
import dev.treen.lsp.feature.Formatting;
import dev.treen.lsp.position.PositionEncoding;
import java.util.List;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CodeLensOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DiagnosticRegistrationOptions;
import org.eclipse.lsp4j.DocumentLinkOptions;
import org.eclipse.lsp4j.DocumentOnTypeFormattingOptions;
import org.eclipse.lsp4j.DocumentRangeFormattingOptions;
import org.eclipse.lsp4j.ExecuteCommandOptions;
import org.eclipse.lsp4j.FileOperationFilter;
import org.eclipse.lsp4j.FileOperationOptions;
import org.eclipse.lsp4j.FileOperationPattern;
import org.eclipse.lsp4j.FileOperationPatternKind;
import org.eclipse.lsp4j.FileOperationsServerCapabilities;
import org.eclipse.lsp4j.InlayHintRegistrationOptions;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.SemanticTokensServerFull;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.SignatureHelpOptions;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.WorkspaceFoldersOptions;
import org.eclipse.lsp4j.WorkspaceServerCapabilities;

/** What the server tells a client that it can do. A test holds that each has an answer. */
final class Abilities {
    private Abilities() {
    }

    static ServerCapabilities in(PositionEncoding encoding) {
        ServerCapabilities can = new ServerCapabilities();
        can.setPositionEncoding(encoding.wireName());
        can.setTextDocumentSync(TextDocumentSyncKind.Incremental);
        looking(can);
        changing(can);
        DiagnosticRegistrationOptions pulled = new DiagnosticRegistrationOptions(true, true);
        pulled.setIdentifier("treen");
        can.setDiagnosticProvider(pulled);
        WorkspaceFoldersOptions folders = new WorkspaceFoldersOptions();
        folders.setSupported(true);
        folders.setChangeNotifications(true);
        can.setExecuteCommandProvider(new ExecuteCommandOptions(Commands.ALL));
        WorkspaceServerCapabilities workspace = new WorkspaceServerCapabilities(folders);
        FileOperationsServerCapabilities moves = new FileOperationsServerCapabilities();
        moves.setWillRename(new FileOperationOptions(List.of(moved("**/*.treen", FileOperationPatternKind.File),
                moved("**", FileOperationPatternKind.Folder))));
        workspace.setFileOperations(moves);
        can.setWorkspace(workspace);
        return can;
    }

    private static FileOperationFilter moved(String glob, String kind) {
        FileOperationPattern pattern = new FileOperationPattern(glob);
        pattern.setMatches(kind);
        return new FileOperationFilter(pattern, "file");
    }

    private static void looking(ServerCapabilities can) {
        can.setHoverProvider(true);
        can.setDefinitionProvider(true);
        can.setDeclarationProvider(true);
        can.setTypeDefinitionProvider(true);
        can.setImplementationProvider(true);
        can.setReferencesProvider(true);
        can.setDocumentHighlightProvider(true);
        can.setDocumentSymbolProvider(true);
        can.setWorkspaceSymbolProvider(true);
        can.setCallHierarchyProvider(true);
        can.setFoldingRangeProvider(true);
        can.setSelectionRangeProvider(true);
        InlayHintRegistrationOptions hints = new InlayHintRegistrationOptions();
        hints.setResolveProvider(true);
        can.setInlayHintProvider(hints);
        can.setCodeLensProvider(new CodeLensOptions(false));
        can.setDocumentLinkProvider(new DocumentLinkOptions(false));
        SemanticTokensWithRegistrationOptions colours = new SemanticTokensWithRegistrationOptions(Colours.legend());
        colours.setFull(new SemanticTokensServerFull(true));
        colours.setRange(true);
        can.setSemanticTokensProvider(colours);
    }

    private static void changing(ServerCapabilities can) {
        can.setCompletionProvider(new CompletionOptions(true, List.of(".", " ")));
        can.setSignatureHelpProvider(new SignatureHelpOptions(List.of("{", ";", " ")));
        CodeActionOptions actions = new CodeActionOptions(List.of(
                CodeActionKind.QuickFix, CodeActionKind.RefactorExtract, CodeActionKind.RefactorInline,
                CodeActionKind.RefactorRewrite, CodeActionKind.RefactorMove, CodeActionKind.SourceFixAll));
        actions.setResolveProvider(true);
        can.setCodeActionProvider(actions);
        can.setRenameProvider(new RenameOptions(true));
        can.setLinkedEditingRangeProvider(true);
        can.setDocumentFormattingProvider(true);
        DocumentRangeFormattingOptions ranges = new DocumentRangeFormattingOptions();
        ranges.setRangesSupport(true);
        can.setDocumentRangeFormattingProvider(ranges);
        can.setDocumentOnTypeFormattingProvider(new DocumentOnTypeFormattingOptions(
                Formatting.TRIGGERS.getFirst(), Formatting.TRIGGERS.subList(1, Formatting.TRIGGERS.size())));
    }
}
