package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Price;
import dev.treen.model.Selling;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a plan costs, line by line: every board that is cut into once, as a whole, and what is wanted besides wood. Nothing
 * is taken off for offcuts, and what has no price stays without one.
 *
 * @param currency the money, as the project writes it; empty where it does not, since none is guessed
 * @param boards the boards that are cut into, in the order of the plan
 * @param supplies what is wanted besides wood
 */
public record Costs(String currency, List<Board> boards, List<Supplies.Supply> supplies) {
    /** Keeps its own copies. */
    public Costs {
        boards = List.copyOf(boards);
        supplies = List.copyOf(supplies);
    }

    /**
     * Money, to the smallest coin; the lines are rounded and then added, as on paper.
     *
     * @param least at least
     * @param most at most
     */
    public record Sum(BigDecimal least, BigDecimal most) {
        static final Sum NOTHING = new Sum(BigDecimal.ZERO.setScale(2), BigDecimal.ZERO.setScale(2));

        static Sum of(double least, double most) {
            return new Sum(coins(least), coins(most));
        }

        private static BigDecimal coins(double sum) {
            return BigDecimal.valueOf(sum).setScale(2, RoundingMode.HALF_UP);
        }

        Sum plus(Sum other) {
            return new Sum(least.add(other.least), most.add(other.most));
        }
    }

    /** The costs of {@code plan}. */
    public static Costs of(Plan plan) {
        Map<String, Board> boards = new LinkedHashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            boards.putIfAbsent(cut.source().name(), cut.source());
        }
        Joined joined = plan.joined();
        return new Costs(plan.settings().currency(), List.copyOf(boards.values()),
                Supplies.of(joined, plan.cutting().glued()));
    }

    /** Whether any price is known. */
    public boolean any() {
        return priced() > 0;
    }

    /** The sum for a board; empty where nobody said it. */
    public static Optional<Sum> of(Board board) {
        return board.price().map(price -> Sum.of(price.of(board), price.of(board)));
    }

    /** The sum for something besides wood; empty where nobody said it. */
    public static Optional<Sum> of(Supplies.Supply supply) {
        OptionalDouble least = supply.selling().cost((double) supply.least());
        OptionalDouble most = supply.selling().cost((double) supply.most());
        return least.isPresent() && most.isPresent()
                ? Optional.of(Sum.of(least.getAsDouble(), most.getAsDouble()))
                : Optional.empty();
    }

    /** The sum for a board in words. */
    public String words(Board board) {
        Optional<Price> price = board.price();
        if (price.isEmpty()) {
            return "not said";
        }
        String by = price.get().per() == Price.Per.EACH
                ? ""
                : ", at " + money(price.get().amount()) + " " + price.get().per().phrase();
        return money(of(board).orElseThrow()) + by;
    }

    /** The sum for something besides wood in words. */
    public String words(Supplies.Supply supply) {
        Selling selling = supply.selling();
        Optional<Sum> sum = of(supply);
        if (selling.price().isEmpty() || sum.isEmpty()) {
            return "not said";
        }
        Selling.Sum price = selling.price().get();
        String packs = selling.pack().isEmpty() ? "" : ": " + packs(supply);
        boolean single = supply.most() == 1 && packs.isEmpty() && price.per() == Selling.Per.EACH;
        return money(sum.get()) + packs
                + (single ? ""
                        : (packs.isEmpty() ? ", at " : " at ") + money(price.amount()) + " " + price.per().phrase());
    }

    private static String packs(Supplies.Supply supply) {
        long least = Math.round(supply.selling().packs((double) supply.least()));
        long most = Math.round(supply.selling().packs((double) supply.most()));
        String holds = plainNumber(supply.selling().pack().orElseThrow());
        return (least == most ? String.valueOf(least) : least + " to " + most) + (most == 1 ? " pack" : " packs")
                + " of "
                + (holds + " " + supply.unit()).strip();
    }

    private static String plainNumber(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** All that has a price together. */
    public Sum together() {
        Sum sum = Sum.NOTHING;
        for (Board board : boards) {
            sum = sum.plus(of(board).orElse(Sum.NOTHING));
        }
        for (Supplies.Supply supply : supplies) {
            sum = sum.plus(of(supply).orElse(Sum.NOTHING));
        }
        return sum;
    }

    /** How many lines have a price. */
    public int priced() {
        return (int) (boards.stream().filter(board -> of(board).isPresent()).count()
                + supplies.stream().filter(supply -> of(supply).isPresent()).count());
    }

    /** How many lines want one; finishes of which one is to be chosen are one line. */
    public int lines() {
        return priced() + unpriced().size();
    }

    /** What has no price, each thing once. */
    public List<String> unpriced() {
        List<String> names = new ArrayList<>();
        boards.stream().filter(board -> of(board).isEmpty()).forEach(board -> names.add("`" + board.name() + "`"));
        boolean open = false;
        for (Supplies.Supply supply : supplies) {
            if (of(supply).isPresent() || (supply.either() && open)) {
                continue;
            }
            open |= supply.either();
            names.add(supply.either() ? "the finish" : supply.called());
        }
        return names;
    }

    /** All of it in a sentence or two. */
    public String sum() {
        List<String> unpriced = unpriced();
        return "Together " + money(together()) + ", for "
                + (unpriced.isEmpty() ? "all that is wanted" : priced() + " of " + lines() + " priced")
                + ": boards as a whole, bottles and packets too where their size is said."
                + (unpriced.isEmpty() ? "" : " No price is said for " + String.join("; ", unpriced) + ".");
    }

    private String money(Sum sum) {
        return sum.least().compareTo(sum.most()) == 0
                ? money(sum.least())
                : money(sum.least()) + " to " + sum.most().toPlainString();
    }

    private String money(double sum) {
        return money(Sum.coins(sum));
    }

    private String money(BigDecimal sum) {
        boolean word = !currency.isEmpty() && Character.isLetter(currency.codePointBefore(currency.length()));
        return currency + (word ? "\u00a0" : "") + sum.toPlainString();
    }
}
