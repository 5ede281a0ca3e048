package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.util.List;

/**
 * What a file says, whole or with holes: parsing never fails. Statements that could be read are all here; what could not
 * is in {@code findings}.
 */
public record SyntaxTree(SourceFile file, List<Statement> statements, List<Token> tokens, List<Finding> findings) {}
