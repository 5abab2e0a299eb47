package dev.ledgerwing.core.words;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.ElementKind;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighedAs;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes the values of fields for people, masses and lengths in a member's units. */
final class ValueWords {

    private static final Set<FieldWord> SAID_ELSEWHERE = Set.of(FieldWord.ID, FieldWord.CODE, FieldWord.NAME);
    private static final int PLACES = 3;
    /** More parts than these on the scales are counted, not named. */
    private static final int MOST_NAMED = 6;
    /** As much of a fingerprint as people compare. */
    private static final int FINGERPRINT = 12;

    private final Figures figures;
    private final ElementNames names;

    ValueWords(Figures figures, ElementNames names) {
        this.figures = figures;
        this.names = names;
    }

    /** What a field holds. */
    String text(FieldWord field, @Nullable Object value) {
        if (isNothing(value)) {
            return field.missing();
        }
        if (value instanceof Collection<?> all) {
            if (field == FieldWord.ABOARD && all.size() > MOST_NAMED) {
                return all.size() + " parts";
            }
            return all.stream().map(each -> text(field, each)).collect(Collectors.joining(", "));
        }
        if (value instanceof Map<?, ?> all) {
            return all.entrySet().stream().map(each -> entry(field, each)).collect(Collectors.joining(", "));
        }
        ElementKind kind = field.refersTo();
        if (kind != null && value instanceof String id) {
            return names.of(kind, id);
        }
        if (field == FieldWord.FROM && value instanceof String code) {
            return names.of(ElementKind.SOURCE, names.of(ElementKind.RAIL, code));
        }
        return value instanceof Record record ? record(record) : single(field, value);
    }

    private static boolean isNothing(@Nullable Object value) {
        return value == null
                || (value instanceof String text && text.isBlank())
                || (value instanceof Collection<?> all && all.isEmpty())
                || (value instanceof Map<?, ?> map && map.isEmpty());
    }

    private String entry(FieldWord field, Map.Entry<?, ?> entry) {
        String key = text(field, entry.getKey());
        if (entry.getValue() instanceof Demand demand) {
            return key + ": " + (demand.equals(Demand.OPEN) ? "nothing" : described(demand));
        }
        return entry.getValue() instanceof Double share
                ? key + " " + Figures.percent(100 * share)
                : key + " at " + text(field, entry.getValue());
    }

    private static String single(FieldWord field, @Nullable Object value) {
        if (value instanceof Double number) {
            return Figures.number(number, PLACES) + field.unit();
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (field == FieldWord.FINGERPRINT && value instanceof String text) {
            return text.substring(0, Math.min(FINGERPRINT, text.length()));
        }
        return value instanceof Enum<?> constant ? constant(constant) : String.valueOf(value);
    }

    private static String constant(Enum<?> constant) {
        if (constant instanceof Stage stage) {
            return stage.title();
        }
        if (constant instanceof Category category) {
            return category.title();
        }
        if (constant instanceof Basis basis) {
            return basis.word();
        }
        if (constant instanceof FitState state) {
            return state.word();
        }
        if (constant instanceof WeighedAs weighedAs) {
            return weighedAs.words();
        }
        if (constant instanceof MassBudget.CeilingIs ceilingIs) {
            return ceilingIs.words();
        }
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String record(Record value) {
        if (value instanceof Mass mass) {
            return figures.mass(mass);
        }
        if (value instanceof Length length) {
            return figures.length(length);
        }
        if (value instanceof Station station) {
            return station(station);
        }
        if (value instanceof LinePlace.Travel travel) {
            return "from " + figures.length(travel.fromX()) + " to " + figures.length(travel.toX());
        }
        if (value instanceof LinePlace.Size size) {
            return figures.lengthNumber(size.length()) + " × " + figures.lengthNumber(size.width()) + " × "
                    + figures.length(size.height());
        }
        if (value instanceof Moment moment) {
            return Figures.number(moment.gMm(), PLACES) + "\u2009g\u2009mm";
        }
        if (value instanceof Panel panel) {
            return panel(panel);
        }
        if (value instanceof FeedElement element) {
            return element.name() + " (" + described(element) + ")";
        }
        return value instanceof GrowthTable.Row row ? growth(row) : described(value);
    }

    private String panel(Panel panel) {
        return figures.length(panel.span()) + " long, chord " + figures.lengthNumber(panel.rootChord()) + " to "
                + figures.length(panel.tipChord()) + ", tip set back " + figures.length(panel.tipOffset())
                + ", dihedral " + Figures.number(panel.dihedralDeg(), PLACES) + "°";
    }

    /** The height above the reference line and the offset from the centre line are left out where there is none. */
    private String station(Station station) {
        String aft = figures.length(station.x()) + " aft";
        String right = station.y().um() == 0 ? "" : ", " + figures.length(station.y()) + " to the right";
        String up = station.z().um() == 0 ? "" : ", " + figures.length(station.z()) + " up";
        return aft + right + up;
    }

    private static String growth(GrowthTable.Row row) {
        return row.category().title() + ": " + Figures.percent(row.guessedPercent()) + " guessed, "
                + Figures.percent(row.calculatedPercent()) + " calculated, " + Figures.percent(row.cataloguePercent())
                + " catalogue";
    }

    /** {@code 12.5 g weighed}. */
    String mass(LineMass mass) {
        Mass unit = mass.unitMass();
        return unit == null
                ? "mass not known"
                : figures.mass(unit) + " " + mass.basis().word();
    }

    /** Everything a record holds, field by field; what is not there, and what names it, is left out. */
    String described(Record value) {
        if (value instanceof LineMass mass) {
            return mass(mass);
        }
        List<String> said = new ArrayList<>();
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            Object held = read(component, value);
            FieldWord field = word(component.getName());
            if (!isNothing(held) && !goesWithoutSaying(field, held)) {
                said.add(Boolean.TRUE.equals(held) ? field.word() : field.word() + " " + text(field, held));
            }
        }
        return String.join(", ", said);
    }

    private static boolean goesWithoutSaying(FieldWord field, @Nullable Object held) {
        boolean single = field == FieldWord.COUNT && Integer.valueOf(1).equals(held);
        return Boolean.FALSE.equals(held) || single || SAID_ELSEWHERE.contains(field);
    }

    static FieldWord word(String field) {
        return FieldWord.of(field).orElseThrow(() -> new IllegalStateException("no word for the field " + field));
    }

    private static @Nullable Object read(RecordComponent component, Record value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException unreachable) {
            throw new IllegalStateException("cannot read " + component, unreachable);
        }
    }
}
