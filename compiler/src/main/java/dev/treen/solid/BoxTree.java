package dev.treen.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Finds quickly which of many things may meet: a tree of extents, halved at the middle of its longest direction.
 *
 * <p>Building takes about n log² n steps and a question about log n and as many steps as there are answers, so asking for
 * every thing stays near linear while parts touch a bounded number of others, as they do in furniture.
 */
final class BoxTree {
    private static final int LEAF = 4;

    private final List<Span> spans;
    private final @Nullable Node root;

    private record Node(Span span, List<Integer> items, List<Node> children) {}

    BoxTree(List<Span> spans) {
        this.spans = spans;
        Integer[] all = new Integer[spans.size()];
        Arrays.setAll(all, i -> i);
        this.root = all.length == 0 ? null : build(List.of(all));
    }

    private Node build(List<Integer> items) {
        Span span = items.stream().map(spans::get).reduce(Span::join).orElseThrow();
        if (items.size() <= LEAF) {
            return new Node(span, items, List.of());
        }
        Axis longest = longest(items);
        List<Integer> sorted = new ArrayList<>(items);
        sorted.sort(Comparator.comparingDouble(i -> spans.get(i).middle(longest)));
        int half = sorted.size() / 2;
        return new Node(span, List.of(),
                List.of(build(List.copyOf(sorted.subList(0, half))),
                        build(List.copyOf(sorted.subList(half, sorted.size())))));
    }

    /** The direction along which the middles are spread most. */
    private Axis longest(List<Integer> items) {
        Axis best = Axis.X;
        double most = -1;
        for (Axis axis : Axis.values()) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int item : items) {
                double middle = spans.get(item).middle(axis);
                low = Math.min(low, middle);
                high = Math.max(high, middle);
            }
            if (high - low > most) {
                most = high - low;
                best = axis;
            }
        }
        return best;
    }

    /** The extent of one of the things. */
    Span span(int item) {
        return spans.get(item);
    }

    /** Calls back with the number of each thing whose extent may meet the given one. */
    void near(Span query, IntConsumer found) {
        if (root != null) {
            near(root, query, found);
        }
    }

    private void near(Node node, Span query, IntConsumer found) {
        if (node.span().apart(query)) {
            return;
        }
        for (int item : node.items()) {
            if (!spans.get(item).apart(query)) {
                found.accept(item);
            }
        }
        for (Node child : node.children()) {
            near(child, query, found);
        }
    }

    /** Whether any of the things whose extents may meet the given one is as asked; stops at the first. */
    boolean any(Span query, IntPredicate asked) {
        return root != null && any(root, query, asked);
    }

    private boolean any(Node node, Span query, IntPredicate asked) {
        if (node.span().apart(query)) {
            return false;
        }
        for (int item : node.items()) {
            if (!spans.get(item).apart(query) && asked.test(item)) {
                return true;
            }
        }
        for (Node child : node.children()) {
            if (any(child, query, asked)) {
                return true;
            }
        }
        return false;
    }

    /** The pairs, lower number first and in order, whose extents may meet. */
    List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            int first = i;
            near(spans.get(i), second -> {
                if (second > first) {
                    pairs.add(new Pair(first, second));
                }
            });
        }
        pairs.sort(Comparator.comparingInt(Pair::first).thenComparingInt(Pair::second));
        return pairs;
    }

    /** Two different things. */
    record Pair(int first, int second) {}
}
