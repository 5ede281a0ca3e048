package dev.treen.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Flat bits gathered into areas that hang together along an edge; a common point does not join them. */
final class Clusters {
    private final List<Poly> bits;
    private final int[] leaders;

    private record Edge(Rat low, Rat high, int bit) {}

    private Clusters(List<Poly> bits) {
        this.bits = bits;
        this.leaders = IntStream.range(0, bits.size()).toArray();
    }

    /** The areas, in the order of their first bits. */
    static List<List<Poly>> of(List<Poly> bits) {
        Clusters clusters = new Clusters(bits);
        clusters.join();
        Map<Integer, List<Poly>> areas = new LinkedHashMap<>();
        for (int i = 0; i < bits.size(); i++) {
            areas.computeIfAbsent(clusters.leader(i), l -> new ArrayList<>()).add(bits.get(i));
        }
        return List.copyOf(areas.values());
    }

    private void join() {
        Map<Line2, List<Edge>> lines = new HashMap<>();
        for (int i = 0; i < bits.size(); i++) {
            List<Vec2> corners = bits.get(i).corners();
            for (int c = 0; c < corners.size(); c++) {
                Vec2 next = bits.get(i).next(c);
                Line2 line = Line2.through(corners.get(c), next);
                Rat a = line.parameter(corners.get(c));
                Rat b = line.parameter(next);
                lines.computeIfAbsent(line, l -> new ArrayList<>(2)).add(new Edge(a.min(b), a.max(b), i));
            }
        }
        for (List<Edge> edges : lines.values()) {
            for (Edge one : edges) {
                for (Edge other : edges) {
                    if (one.low().lessThan(other.high()) && other.low().lessThan(one.high())) {
                        leaders[leader(one.bit())] = leader(other.bit());
                    }
                }
            }
        }
    }

    private int leader(int bit) {
        int at = bit;
        while (leaders[at] != at) {
            at = leaders[at];
        }
        return at;
    }
}
