package borderwright.engine.garden.vocabulary;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a part of the garden document means, for the JSON Schema, the guide and fault sentences. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.PARAMETER, ElementType.METHOD})
public @interface Described {
    /** One sentence for the person who writes the document. */
    String value();

    /** Example value as it would be written. */
    String example() default "";

    /** What is taken when it is left out, in words; empty when it is required or simply absent. */
    String otherwise() default "";

    /** Least value: mm for a length, degrees for an angle, the number itself otherwise. */
    double atLeast() default Double.NEGATIVE_INFINITY;

    /** Greatest value, in the same units. */
    double atMost() default Double.POSITIVE_INFINITY;

    /** Beyond this a value is believed only with {@code yes really} after it: lengths, mm. */
    double usuallyAtLeast() default Double.NEGATIVE_INFINITY;

    /** Beyond this a value is believed only with {@code yes really} after it: lengths, mm. */
    double usuallyAtMost() default Double.POSITIVE_INFINITY;
}
