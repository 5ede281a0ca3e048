package dev.treen.yield;

import dev.treen.yield.Outcome.Fault;
import dev.treen.yield.Outcome.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;

/** What is wrong with a problem before anything is tried. */
final class Faults {
    /** Sizes stay below this so that no product or sum of areas leaves a long. */
    private static final long GREATEST_SIZE = 1L << 27;

    private static final long GREATEST_SUM = 1L << 60;

    private final YieldProblem problem;
    private final List<Fault> faults = new ArrayList<>();

    private Faults(YieldProblem problem) {
        this.problem = problem;
    }

    static List<Fault> of(YieldProblem problem) {
        var faults = new Faults(problem);
        faults.settings();
        faults.stocks();
        faults.pieces();
        faults.runs();
        return List.copyOf(faults.faults);
    }

    private void add(Kind kind, String where) {
        faults.add(new Fault(kind, where));
    }

    private void settings() {
        Settings s = problem.settings();
        if (s.kerf() < 0 || s.endWaste() < 0 || s.edgeWaste() < 0 || s.steps() < 0) {
            add(Kind.NEGATIVE, "settings");
        }
        if (s.minOffcutLength() < 1 || s.minOffcutWidth() < 1) {
            add(Kind.SIZE_NOT_POSITIVE, "settings");
        }
        if (Math.max(s.kerf(), Math.max(s.endWaste(), s.edgeWaste())) > GREATEST_SIZE) {
            add(Kind.TOO_GREAT, "settings");
        }
    }

    private void stocks() {
        if (problem.stocks().isEmpty()) {
            add(Kind.NO_STOCK, "");
        }
        var names = new HashSet<String>();
        double weights = 0;
        for (Stock stock : problem.stocks()) {
            if (!names.add(stock.id())) {
                add(Kind.TWICE, stock.id());
            }
            size(stock.length(), stock.width(), stock.id());
            if (stock.cost() < 0 || stock.count() < 0) {
                add(Kind.NEGATIVE, stock.id());
            }
            weights += (double) stock.weight() * Math.min(stock.count(), 1_000_000);
        }
        if (weights > GREATEST_SUM) {
            add(Kind.TOO_GREAT, "cost");
        }
    }

    private void size(long length, long width, String id) {
        if (length <= 0 || width <= 0) {
            add(Kind.SIZE_NOT_POSITIVE, id);
        } else if (length > GREATEST_SIZE || width > GREATEST_SIZE) {
            add(Kind.TOO_GREAT, id);
        }
    }

    private void pieces() {
        var names = new HashSet<String>();
        var stocks = new HashSet<String>();
        problem.stocks().forEach(stock -> stocks.add(stock.id()));
        double areas = 0;
        double values = 0;
        long copies = 0;
        for (Piece piece : problem.pieces()) {
            if (!names.add(piece.id())) {
                add(Kind.TWICE, piece.id());
            }
            size(piece.length(), piece.width(), piece.id());
            if (piece.copies() < 0 || piece.value() < 0) {
                add(Kind.NEGATIVE, piece.id());
            }
            boolean endless = piece.copies() == Piece.UNLIMITED;
            if (endless && problem.settings().objective() != Objective.MOST_VALUE) {
                add(Kind.UNLIMITED_COPIES, piece.id());
            }
            if (piece.onlyFrom().isPresent() && !stocks.containsAll(piece.onlyFrom().get())) {
                add(Kind.UNKNOWN_NAME, piece.id());
            }
            double count = endless ? 1e6 : piece.copies();
            areas += (double) (piece.length() + problem.settings().kerf())
                    * (piece.width() + problem.settings().kerf())
                    * count;
            values += (double) piece.value() * count;
            copies += endless ? 1 : piece.copies();
        }
        if (areas > GREATEST_SUM || values > GREATEST_SUM || copies > 1_000_000) {
            add(Kind.TOO_GREAT, "pieces");
        }
    }

    private void runs() {
        var free = new HashMap<String, Integer>();
        problem.pieces().forEach(piece -> free.put(piece.id(), piece.copies()));
        for (Run run : problem.runs()) {
            if (run.pieceIds().isEmpty()) {
                add(Kind.SIZE_NOT_POSITIVE, "run");
            }
            for (String id : run.pieceIds()) {
                Integer count = free.get(id);
                if (count == null) {
                    add(Kind.UNKNOWN_NAME, id);
                } else if (count == 0) {
                    add(Kind.RUN_TOO_LONG, id);
                } else {
                    free.put(id, count - 1);
                }
            }
        }
    }
}
