package dev.treen.lsp.feature;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Severity;
import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Document;
import dev.treen.model.JointSchema;
import dev.treen.plan.Compilation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;

/** What can follow in the head of a statement: the names that it takes, and its own next word. */
final class Heads {
    private static final String NAME = "[\\p{L}_][\\p{L}\\p{M}\\p{Nd}_]*";
    private static final String PATH = NAME + "(?:\\[[^\\]]*\\])?(?:\\." + NAME + "(?:\\[[^\\]]*\\])?)*";
    private static final Pattern HEAD = Pattern.compile(
            "\\s*(part|board|sheet|let|pattern|param|repeat|project|joint|require|when|accept|measured|holds|use)\\s+(.*)");
    private static final Pattern JOINT = Pattern.compile("(\\w+)\\s+(.*?)(\\S*)");
    private static final Pattern LIKE = Pattern.compile(PATH + "\\s+like\\s+\\S*");
    private static final Pattern NAMED = Pattern.compile(PATH + "\\s+\\w*");
    private static final Pattern TYPE = Pattern.compile(NAME + "\\s*:\\s*\\w*");
    private static final Pattern TURN = Pattern.compile(NAME + "\\s+in\\s+.*");
    private static final Pattern CODE = Pattern.compile("[\\w-]*");
    private static final Pattern ACCEPTED = Pattern.compile("[\\w-]+\\s+(.*?)(\\S*)");
    /** Behind it a value is wanted, and not what ties two together. */
    private static final Pattern WANTING = Pattern.compile(
            "(?:.*[-+*/(,<>=:\\[]|(?:.*\\W)?(?:and|or|not|then|else|when|x|in|\\d?\\.\\.)|)", Pattern.DOTALL);

    private static final Map<String, String> COMPARISONS = new TreeMap<>(Map.of(
            "<", "less than", "<=", "at most", ">", "more than", ">=", "at least", "==", "the same as",
            "!=", "not the same as"));

    private final Document document;
    private final Words words;

    /** Makes the items. */
    interface Words {
        /** A word of the language. */
        CompletionItem word(String word, String detail);

        /** Names of these kinds. */
        List<CompletionItem> names(List<String> kinds);

        /** What can be reckoned with. */
        List<CompletionItem> reckoned();
    }

    Heads(Document document, Words words) {
        this.document = document;
        this.words = words;
    }

    /** What can stand behind {@code before}; empty where that is the head of no statement of its own. */
    Optional<List<CompletionItem>> after(String before) {
        Matcher head = HEAD.matcher(before);
        return head.matches() ? Optional.of(of(head.group(1), head.group(2))) : Optional.empty();
    }

    /** Whether a value is wanted behind {@code said}, in which the word that is being typed is left out. */
    static boolean wantsValue(String said) {
        return WANTING.matcher(said.strip()).matches();
    }

    /** What is said, without the word that is being typed. */
    static String said(String before) {
        return before.replaceAll("[\\p{L}\\p{M}\\p{Nd}_]*$", "");
    }

    private List<CompletionItem> of(String statement, String rest) {
        return switch (statement) {
            case "part" -> part(rest);
            case "joint" -> joint(rest);
            case "let" -> rest.contains("=") ? value(rest.substring(rest.indexOf('=') + 1)) : List.of();
            case "param" -> param(rest);
            case "repeat" -> TURN.matcher(rest).matches()
                    ? value(rest.substring(rest.indexOf(" in ") + 4))
                    : next(NAMED.matcher(rest).matches(), "in", "how often: in 1..3");
            case "require" -> condition(rest, true);
            case "when" -> condition(rest, false);
            case "accept" -> accept(rest);
            case "measured" -> rest.strip().contains(" ") || rest.endsWith(" ")
                    ? List.of()
                    : words.names(List.of("part", "instance"));
            case "holds" -> rest.endsWith(" ") ? List.of() : words.names(List.of("instance", "part"));
            case "use" -> next(rest.matches("\"[^\"]*\"\\s+\\w*"), "as", "under a name of its own: as rack");
            default -> List.of(); // the name of what is declared, which is its maker's
        };
    }

    private List<CompletionItem> next(boolean now, String word, String detail) {
        return now ? List.of(words.word(word, detail)) : List.of();
    }

    private List<CompletionItem> part(String rest) {
        return LIKE.matcher(rest).matches()
                ? words.names(List.of("part", "instance"))
                : next(NAMED.matcher(rest).matches(), "like", "as another part, but for what the block says");
    }

    private List<CompletionItem> joint(String rest) {
        Matcher joint = JOINT.matcher(rest);
        if (!joint.matches()) {
            return List.of();
        }
        String said = joint.group(2).strip();
        if (said.isEmpty() || said.endsWith(",") || said.matches("(?:.*\\s)?(?:to|into)")) {
            return words.names(List.of("part", "instance"));
        }
        String pair = said.substring(said.lastIndexOf(',') + 1);
        if (pair.matches(".*\\s(?:to|into)\\s.*")) {
            return List.of(words.word("as", "under a name of its own"));
        }
        Optional<JointSchema> kind = JointKinds.schemas().stream()
                .filter(schema -> schema.kind().equals(joint.group(1)))
                .findFirst();
        boolean into = kind.map(JointSchema::into).orElse(false);
        return List.of(words.word(into ? "into" : "to",
                into ? "the left part goes into the right one" : "the two meet as equals"));
    }

    private List<CompletionItem> param(String rest) {
        if (rest.contains("=")) {
            return value(rest.substring(rest.indexOf('=') + 1));
        }
        List<CompletionItem> types = new ArrayList<>();
        if (TYPE.matcher(rest).matches()) {
            List.of("length", "size", "count", "angle", "text", "part", "board")
                    .forEach(type -> types.add(words.word(type, "what an instance must say")));
            types.add(words.word("one of", "one of a few words: one of flat, raised"));
        }
        return types;
    }

    private List<CompletionItem> value(String rest) {
        return wantsValue(said(rest)) ? words.reckoned() : List.of();
    }

    private List<CompletionItem> condition(String rest, boolean because) {
        if (rest.contains("because")) {
            return List.of();
        }
        if (wantsValue(said(rest))) {
            return words.reckoned();
        }
        if (!rest.matches(".*[<>=].*")) {
            return COMPARISONS.entrySet().stream().map(each -> words.word(each.getKey(), each.getValue())).toList();
        }
        List<CompletionItem> items = new ArrayList<>(List.of(
                words.word("and", "both must hold"), words.word("or", "one of both must hold")));
        if (because) {
            items.addFirst(words.word("because", "the reason, in quotes"));
        }
        return items;
    }

    private List<CompletionItem> accept(String rest) {
        if (CODE.matcher(rest).matches()) {
            return codes();
        }
        Matcher accepted = ACCEPTED.matcher(rest);
        if (!accepted.matches() || rest.contains("because")) {
            return List.of();
        }
        String said = accepted.group(1).strip();
        if (said.endsWith(",") || said.matches("(?:.*\\s)?on")) {
            return words.names(List.of("part", "instance", "board", "sheet"));
        }
        CompletionItem because = words.word("because", "the reason, in quotes");
        return said.isEmpty() ? List.of(words.word("on", "only for these parts"), because) : List.of(because);
    }

    /** Warnings that can be accepted; those that the project has come first. */
    private List<CompletionItem> codes() {
        Map<String, CompletionItem> codes = new LinkedHashMap<>();
        for (Finding finding : document.analysis().quick().findings()) {
            if (finding.kind().severity() == Severity.WARNING && isAcceptable(finding.code())) {
                codes.computeIfAbsent(finding.code(), code -> code(code, finding.headline(), "0"));
            }
        }
        for (FindingKind kind : Compilation.kinds()) {
            if (kind.severity() == Severity.WARNING && isAcceptable(kind.code())) {
                codes.computeIfAbsent(kind.code(), code -> code(code, kind.title(), "1"));
            }
        }
        return List.copyOf(codes.values());
    }

    /** What is said of an `accept` itself is mended there. */
    private static boolean isAcceptable(String code) {
        return !code.startsWith("accept-");
    }

    private CompletionItem code(String code, String detail, String before) {
        CompletionItem item = words.word(code, detail);
        item.setKind(CompletionItemKind.Event);
        item.setSortText(before + code);
        return item;
    }
}
