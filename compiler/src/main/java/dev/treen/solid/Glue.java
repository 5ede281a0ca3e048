package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The areas two parts could be glued on, by how the grain of each runs to the surface.
 *
 * @param faces every area of contact with the grain of both parts at it
 */
public record Glue(List<Joint> faces) {

    /** Takes its own copy. */
    public Glue {
        faces = List.copyOf(faces);
    }

    /** How the fibres of a part run to one of its faces. */
    public enum Grain {
        /** Along the face, or nearly: a slope of 1:5 or less, as the cheeks of a tenon or the slope of a dovetail. */
        LONG,
        /** Between both. */
        SLANT,
        /** Out of the face at half a right angle or more: end grain, or a mitre's near end grain. */
        END
    }

    /**
     * One area of contact.
     *
     * @param contact where it is; its plane's normal points out of the first part
     * @param first the grain of the first part there
     * @param second the grain of the second part there
     */
    public record Joint(Contact contact, Grain first, Grain second) {
        /** The area in square millimetres, to double precision. */
        public double area() {
            return contact.region().area();
        }
    }

    /**
     * The areas of contact of two parts.
     *
     * @param alongA an arrow along the grain of {@code a}, of any length but zero
     * @param alongB an arrow along the grain of {@code b}
     */
    public static Glue between(Solid a, Vec3 alongA, Solid b, Vec3 alongB) {
        List<Joint> faces = new ArrayList<>();
        for (Contact contact : Contact.between(a, b)) {
            Vec3 normal = contact.region().plane().normal();
            faces.add(new Joint(contact, grain(alongA, normal), grain(alongB, normal)));
        }
        return new Glue(faces);
    }

    /**
     * How grain runs to a face with the given normal. The comparison is exact: the squared sine of the angle between grain
     * and face is (g·n)² / (g² n²), and for a slope of 1:k it is 1 / (k² + 1).
     *
     * <p>Common practice, no source: that a slope of 1:5 still counts as long grain (dovetails are cut up to about that),
     * and that a mitre counts as end grain.
     */
    public static Grain grain(Vec3 along, Vec3 normal) {
        Rat squaredSine = leaning(along, normal);
        if (squaredSine.times(26).compareTo(Rat.ONE) <= 0) {
            return Grain.LONG;
        }
        return squaredSine.times(2).lessThan(Rat.ONE) ? Grain.SLANT : Grain.END;
    }

    /** The squared sine of the angle between the grain and a face: 0 for long grain, 1 for end grain, exact. */
    public static BigFraction squaredSine(Vec3 along, Vec3 normal) {
        return leaning(along, normal).toFraction();
    }

    private static Rat leaning(Vec3 along, Vec3 normal) {
        return along.inner(normal).square().dividedBy(along.square().times(normal.square()));
    }

    /** The area in square millimetres where the grain runs as given in both parts. */
    public double area(Grain first, Grain second) {
        return faces.stream().filter(face -> face.first() == first && face.second() == second)
                .mapToDouble(Joint::area).sum();
    }

    /** The area that counts: long grain of one part against long grain of the other. */
    public double longToLong() {
        return area(Grain.LONG, Grain.LONG);
    }

    /** The whole area of contact. */
    public double total() {
        return faces.stream().mapToDouble(Joint::area).sum();
    }
}
