package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.model.Board;
import dev.treen.model.Price;
import dev.treen.plan.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the wood costs: every board that is cut into once, as a whole. Nothing is taken off for offcuts, and what has no
 * price stays without one.
 *
 * @param currency the money, as the project writes it
 * @param boards the boards that are cut into, in the order of the plan
 */
record Costs(String currency, List<Board> boards) {
    static Costs of(Plan plan) {
        Map<String, Board> boards = new LinkedHashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            boards.putIfAbsent(cut.source().name(), cut.source());
        }
        return new Costs(plan.settings().currency(), List.copyOf(boards.values()));
    }

    /** Whether any price is known. */
    boolean any() {
        return boards.stream().anyMatch(board -> board.price().isPresent());
    }

    /** The sum for a board as a plain number; empty where nobody said it. */
    static String plain(Board board) {
        return board.price().map(price -> plain(price.of(board))).orElse("");
    }

    private static String plain(double sum) {
        return String.format(Locale.ROOT, "%.2f", sum);
    }

    /** The sum for a board in words. */
    String words(Board board) {
        Optional<Price> price = board.price();
        if (price.isEmpty()) {
            return "not said";
        }
        String by = price.get().per() == Price.Per.EACH
                ? ""
                : ", at " + money(price.get().amount()) + " " + price.get().per().phrase();
        return money(price.get().of(board)) + by;
    }

    /** All boards with a price together, as a plain number. */
    String together() {
        return plain(known());
    }

    private double known() {
        return boards.stream().mapToDouble(board -> board.price().map(price -> price.of(board)).orElse(0.0)).sum();
    }

    /** The names of the boards without a price. */
    List<String> unknown() {
        return boards.stream().filter(board -> board.price().isEmpty()).map(Board::name).toList();
    }

    /** All of it in a sentence or two. */
    String sum() {
        List<String> unknown = unknown();
        return "Wood: " + money(known()) + (unknown.isEmpty() ? "" : ", and what the others cost")
                + ", each board as a whole."
                + (unknown.isEmpty() ? "" : " No price is said for `" + String.join("`, `", unknown) + "`.")
                + " What is wanted besides wood has no price here.";
    }

    private String money(double sum) {
        boolean word = !currency.isEmpty() && Character.isLetter(currency.codePointBefore(currency.length()));
        return currency + (word ? "\u00a0" : "") + plain(sum);
    }
}
