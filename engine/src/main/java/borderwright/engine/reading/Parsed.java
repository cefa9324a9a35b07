package borderwright.engine.reading;

import borderwright.engine.message.Message;
import java.util.Optional;
import java.util.function.Function;

/** What became of a person's text: the value that it states, or what is wrong with it. */
public sealed interface Parsed<T> {

    /** The value, when the text states one. */
    Optional<T> value();

    /** The value; for text that is known to be sound, such as a constant. */
    T orThrow();

    <U> Parsed<U> then(Function<? super T, Parsed<U>> next);

    /** The text states this value. */
    record Good<T>(T found) implements Parsed<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(found);
        }

        @Override
        public T orThrow() {
            return found;
        }

        @Override
        public <U> Parsed<U> then(Function<? super T, Parsed<U>> next) {
            return next.apply(found);
        }
    }

    /**
     * The text states no value.
     *
     * @param fault what is wrong, with the text as found, and what would be right
     */
    record Bad<T>(Message fault) implements Parsed<T> {
        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public T orThrow() {
            throw new IllegalArgumentException(fault.key() + " " + fault.values());
        }

        @Override
        public <U> Parsed<U> then(Function<? super T, Parsed<U>> next) {
            return new Bad<>(fault);
        }
    }
}
