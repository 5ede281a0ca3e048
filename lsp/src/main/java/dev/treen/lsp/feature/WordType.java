package dev.treen.lsp.feature;

import java.util.List;

/** What a word can be to an editor that colours it, by the protocol's own names. */
enum WordType {
    KEYWORD(0, "keyword"),
    PROPERTY(1, "property"),
    VARIABLE(2, "variable"),
    CLASS(3, "class"),
    STRUCT(4, "struct"),
    PARAMETER(5, "parameter"),
    MACRO(6, "macro"),
    NAMESPACE(7, "namespace"),
    NUMBER(8, "number"),
    TYPE(9, "type"),
    STRING(10, "string"),
    COMMENT(11, "comment"),
    OPERATOR(12, "operator"),
    ENUM_MEMBER(13, "enumMember"),
    FUNCTION(14, "function"),
    /** Not coloured, and last because it is not in the legend. */
    NONE(15, "");

    private static final List<WordType> ALL = List.of(values());

    private final int number;
    private final String label;

    WordType(int number, String label) {
        this.number = number;
        this.label = label;
    }

    /** Its place in the legend. */
    int number() {
        return number;
    }

    /** The type at a place in the legend. */
    static WordType numbered(int number) {
        return ALL.get(number);
    }

    /** The protocol's names, by number. */
    static List<String> legend() {
        return ALL.stream().filter(type -> type != NONE).map(type -> type.label).toList();
    }

    /** What a name is that was declared as a {@code let}, a {@code part} and so on. */
    static WordType ofKind(String kind) {
        return switch (kind) {
            case "let" -> VARIABLE;
            case "board", "sheet" -> STRUCT;
            case "part" -> CLASS;
            case "pattern" -> MACRO;
            case "file" -> NAMESPACE;
            case "param" -> PARAMETER;
            default -> CLASS;
        };
    }
}
