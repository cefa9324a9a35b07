package borderwright.engine.message;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Optional;
import org.joda.money.BigMoneyProvider;

/**
 * A place in a sentence for a value.
 *
 * @param name as it stands in the template
 * @param kind what may stand there, and in which unit
 * @param places decimals of a {@link Kind#NUMBER} or {@link Kind#PERCENT}; 0 for other kinds
 */
public record Slot(String name, Kind kind, int places) {
    /** What may stand in a slot; each kind is written with its unit. */
    public enum Kind {
        /** A name, a label, or words that the person gave. */
        TEXT(String.class),
        /** A constant of an enum, for a select: its name in lower case, {@code air_brick}. */
        CHOICE(Enum.class),
        /** A message within the message. */
        MESSAGE(Message.class),
        /** A sentence that may follow after a blank, or nothing: an optional message. */
        FURTHER(Optional.class),
        /** A fault within the message: what is wrong and what would be right. */
        FAULT(Message.class),
        /** Names or messages: {@code A, B and C}. */
        LIST(Collection.class),
        /** Names or messages: {@code A, B, C}. */
        COMMAS(Collection.class),
        /** Names or messages: {@code A; B; C}. */
        SEMICOLONS(Collection.class),
        /** A whole number that a plural may depend on. */
        COUNT(Number.class),
        /** A length, mm; to the millimetre or 1/16 in. */
        LENGTH(Number.class),
        /** The length of a piece, mm; to 0.1 mm or 1/16 in. */
        PIECE(Number.class),
        /** A length on site, mm; metres or feet. */
        SITE(Number.class),
        /** A length of board or roll bought by the run, mm; to 0.1 m or a foot. */
        RUN(Number.class),
        /** A small difference, mm; never written as nothing. */
        SMALL(Number.class),
        /** An area, m2. */
        AREA(Number.class),
        /** A volume, m3. */
        VOLUME(Number.class),
        /** A weight, kg. */
        WEIGHT(Number.class),
        /** An angle, degrees; {@code 26.5°}. */
        ANGLE(Number.class),
        /** An angle that was read, degrees; {@code 88.83 deg}. */
        DEGREES(Number.class),
        /** A force, N. */
        FORCE(Number.class),
        /** A weight by volume, kN/m3. */
        UNIT_WEIGHT(Number.class),
        /** A load on an area, kg/m2; {@code 8.6 kN/m2} or {@code 180 lb/sq ft}. */
        AREA_LOAD(Number.class),
        /** Load effect over what is borne, as a fraction of 1; in whole percent, {@code more than 999 %} beyond. */
        USE(Number.class),
        /** Money with its currency; of the currency XXX, which is none, the amount alone. */
        MONEY(BigMoneyProvider.class),
        /** A plain number without a unit, with a fixed number of decimals. */
        NUMBER(Number.class),
        /** A share, as a fraction of 1; written in percent with a fixed number of decimals, {@code 28.3 %}. */
        PERCENT(Number.class),
        /** An exact decimal, as it is. */
        DECIMAL(BigDecimal.class);

        private final Class<?> type;

        Kind(Class<?> type) {
            this.type = type;
        }

        boolean takes(Object value) {
            return type.isInstance(value);
        }
    }

    public static Slot text(String name) {
        return new Slot(name, Kind.TEXT, 0);
    }

    public static Slot choice(String name) {
        return new Slot(name, Kind.CHOICE, 0);
    }

    public static Slot message(String name) {
        return new Slot(name, Kind.MESSAGE, 0);
    }

    public static Slot further(String name) {
        return new Slot(name, Kind.FURTHER, 0);
    }

    public static Slot fault(String name) {
        return new Slot(name, Kind.FAULT, 0);
    }

    public static Slot list(String name) {
        return new Slot(name, Kind.LIST, 0);
    }

    public static Slot commas(String name) {
        return new Slot(name, Kind.COMMAS, 0);
    }

    public static Slot semicolons(String name) {
        return new Slot(name, Kind.SEMICOLONS, 0);
    }

    public static Slot count(String name) {
        return new Slot(name, Kind.COUNT, 0);
    }

    public static Slot length(String name) {
        return new Slot(name, Kind.LENGTH, 0);
    }

    public static Slot piece(String name) {
        return new Slot(name, Kind.PIECE, 0);
    }

    public static Slot site(String name) {
        return new Slot(name, Kind.SITE, 0);
    }

    public static Slot run(String name) {
        return new Slot(name, Kind.RUN, 0);
    }

    public static Slot small(String name) {
        return new Slot(name, Kind.SMALL, 0);
    }

    public static Slot use(String name) {
        return new Slot(name, Kind.USE, 0);
    }

    public static Slot area(String name) {
        return new Slot(name, Kind.AREA, 0);
    }

    public static Slot volume(String name) {
        return new Slot(name, Kind.VOLUME, 0);
    }

    public static Slot weight(String name) {
        return new Slot(name, Kind.WEIGHT, 0);
    }

    public static Slot angle(String name) {
        return new Slot(name, Kind.ANGLE, 0);
    }

    public static Slot degrees(String name) {
        return new Slot(name, Kind.DEGREES, 0);
    }

    public static Slot force(String name) {
        return new Slot(name, Kind.FORCE, 0);
    }

    public static Slot unitWeight(String name) {
        return new Slot(name, Kind.UNIT_WEIGHT, 0);
    }

    public static Slot areaLoad(String name) {
        return new Slot(name, Kind.AREA_LOAD, 0);
    }

    public static Slot money(String name) {
        return new Slot(name, Kind.MONEY, 0);
    }

    public static Slot number(String name, int places) {
        return new Slot(name, Kind.NUMBER, places);
    }

    public static Slot percent(String name, int places) {
        return new Slot(name, Kind.PERCENT, places);
    }

    public static Slot decimal(String name) {
        return new Slot(name, Kind.DECIMAL, 0);
    }
}
