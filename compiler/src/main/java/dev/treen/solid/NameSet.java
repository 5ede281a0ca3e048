package dev.treen.solid;

import java.util.AbstractSet;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some of the names of an assembly, in its order. What stays behind at each of a thousand moves is nearly all of it: such
 * sets share the names and keep a bit for each.
 */
final class NameSet extends AbstractSet<String> {
    private final Names all;
    private final BitSet chosen;

    /** The names of all parts, which many sets share. */
    record Names(List<String> list, Map<String, Integer> places) {
        /** Names that differ, in the order of an assembly. */
        static Names of(List<String> list) {
            Map<String, Integer> places = new HashMap<>();
            for (int i = 0; i < list.size(); i++) {
                places.put(list.get(i), i);
            }
            return new Names(List.copyOf(list), places);
        }

        int place(String name) {
            return places.getOrDefault(name, list.size());
        }

        /** Those at the places that are set; the bits are copied. */
        Set<String> at(BitSet chosen) {
            return new NameSet(this, (BitSet) chosen.clone());
        }
    }

    private NameSet(Names all, BitSet chosen) {
        this.all = all;
        this.chosen = chosen;
    }

    @Override
    public int size() {
        return chosen.cardinality();
    }

    @Override
    public boolean contains(Object name) {
        return name instanceof String text && chosen.get(all.place(text));
    }

    @Override
    public Iterator<String> iterator() {
        return chosen.stream().mapToObj(all.list()::get).iterator();
    }
}
