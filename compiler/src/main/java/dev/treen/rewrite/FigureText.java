package dev.treen.rewrite;

import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Unit;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** How figures are written in a file, exactly. */
final class FigureText {
    private static final BigFraction MANY_PLACES = BigFraction.of(1_000_000);

    private FigureText() {
    }

    /** The unit of bare numbers in a file. */
    static Unit unit(SyntaxTree tree) {
        return tree.statements().stream()
                .filter(Statement.Project.class::isInstance)
                .flatMap(each -> each.body().stream())
                .flatMap(body -> body.statements().stream())
                .filter(each -> each instanceof Statement.Property property
                        && property.name().text().equals("units") && property.values().size() == 1)
                .flatMap(each -> Unit.spelled(((Statement.Property) each).values().getFirst().span().text()).stream())
                .findFirst()
                .orElse(Unit.MM);
    }

    /** Measures side by side, as bare numbers in {@code unit}. */
    static String measures(List<BigFraction> mm, Unit unit) {
        return String.join(" x ", mm.stream().map(each -> figure(each, unit)).toList());
    }

    private static String figure(BigFraction mm, Unit unit) {
        BigFraction amount = mm.divide(unit.of(BigFraction.ONE).amount());
        boolean decimal = unit != Unit.IN && Exact.isWhole(amount.multiply(MANY_PLACES));
        if (decimal) {
            return DecimalText.exact(amount);
        }
        BigInteger[] whole = amount.abs().getNumerator().divideAndRemainder(amount.abs().getDenominator());
        Optional<String> rest = whole[1].signum() == 0
                ? Optional.empty()
                : Optional.of(whole[1] + "/" + amount.abs().getDenominator());
        String text = rest.map(part -> whole[0].signum() == 0 ? part : whole[0] + " " + part)
                .orElse(whole[0].toString());
        return amount.signum() < 0 ? "-(" + text + ")" : text;
    }
}
