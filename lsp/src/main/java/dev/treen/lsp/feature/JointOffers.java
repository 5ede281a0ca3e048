package dev.treen.lsp.feature;

import dev.treen.finding.Finding;
import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.JointSchema;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which kinds of joint suit two parts as they are placed. Each kind is put in and the project compiled: a kind suits when
 * that says nothing new about the line. So an offer can never say something else than the check does afterwards.
 */
final class JointOffers {
    /** Beyond this every kind is offered alike: trying them all would keep the maker waiting. */
    private static final int LARGEST = 32 << 10;
    private static final Pattern REST = Pattern.compile("\\w*\\s+([\\w.\\[\\]]+)\\s+(?:to|into)\\s+([\\w.\\[\\]]+).*");

    private JointOffers() {
    }

    /** The kinds that suit the parts named behind the cursor; empty where none are, or nothing can be tried. */
    static Set<String> fitting(Document document, int offset) {
        String text = document.file().text();
        int line = document.file().lineOf(offset);
        int end = document.file().lineStart(line) + document.file().lineText(line).length();
        int start = offset;
        while (start > 0 && Character.isLetterOrDigit(text.charAt(start - 1))) {
            start--;
        }
        Matcher rest = REST.matcher(text.substring(offset, Math.max(offset, end)));
        Set<String> fitting = new HashSet<>();
        if (!rest.matches() || text.length() > LARGEST) {
            return fitting;
        }
        for (JointSchema schema : JointKinds.schemas()) {
            String tried = text.substring(0, start) + schema.kind() + ' ' + rest.group(1)
                    + (schema.into() ? " into " : " to ") + rest.group(2) + text.substring(end);
            SourceFile file = new SourceFile(document.file().name(), tried);
            List<Finding> findings = Compilation.of(file, document::used).quick().findings();
            if (findings.stream().noneMatch(finding -> finding.at().file().equals(file)
                    && file.lineOf(finding.at().start()) == line)) {
                fitting.add(schema.kind());
            }
        }
        return fitting;
    }
}
