package dev.treen.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lists of parts as a reader wants them: {@code `leg[1..4]`, `top` and `end`}. */
public final class Names {
    private static final Pattern NUMBERED = Pattern.compile("(.*)\\[(\\d{1,6})\\]");

    private Names() {
    }

    /** {@code names} in their order, with those that count on from each other as one. */
    public static List<String> shortened(Collection<String> names) {
        List<String> all = new ArrayList<>(names);
        List<String> fewer = new ArrayList<>();
        while (!all.isEmpty()) {
            String first = all.removeFirst();
            Matcher numbered = NUMBERED.matcher(first);
            if (!numbered.matches()) {
                fewer.add(first);
                continue;
            }
            TreeSet<Integer> numbers = new TreeSet<>(List.of(Integer.parseInt(numbered.group(2))));
            all.removeIf(other -> {
                Matcher like = NUMBERED.matcher(other);
                return like.matches() && like.group(1).equals(numbered.group(1))
                        && (numbers.add(Integer.parseInt(like.group(2))) || other.equals(first));
            });
            addRuns(numbered.group(1), numbers, fewer);
        }
        return fewer;
    }

    private static void addRuns(String stem, NavigableSet<Integer> numbers, List<String> to) {
        while (!numbers.isEmpty()) {
            int low = numbers.removeFirst();
            int high = low;
            while (numbers.remove(high + 1)) {
                high++;
            }
            to.add(stem + "[" + low + (high == low ? "" : (high == low + 1 ? ", " : "..") + high) + "]");
        }
    }

    /** {@code 1 to 4, 6}: numbers, with those that count on from each other as one. */
    static List<String> runs(NavigableSet<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        NavigableSet<Integer> left = new TreeSet<>(numbers);
        while (!left.isEmpty()) {
            int low = left.removeFirst();
            int high = low;
            while (left.remove(high + 1)) {
                high++;
            }
            runs.add(low + (high == low ? "" : (high == low + 1 ? ", " : " to ") + high));
        }
        return runs;
    }

    /** {@code `a`, `b` and `c`}. */
    static String quoted(Collection<String> names) {
        return list(shortened(names).stream().map(name -> "`" + name + "`").toList());
    }

    /** {@code a, b and c}. */
    static String list(Collection<String> words) {
        List<String> all = List.copyOf(words);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.getLast();
    }
}
