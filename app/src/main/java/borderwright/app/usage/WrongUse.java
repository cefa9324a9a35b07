package borderwright.app.usage;

import borderwright.app.exit.ExitCode;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.engine.spelling.NearestName;
import borderwright.pack.language.Language;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one sentence what is wrong with a command line, and what would be right. */
public final class WrongUse {
    private static final Sentences SENTENCES = Language.english().in(UnitSystem.METRIC);

    private WrongUse() {}

    /** Says what is wrong; the exit code. */
    public static int say(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("borderwright: " + SENTENCES.text(message(fault)));
        err.println(SENTENCES.text(UsageMessage.SEE_HELP.of(called(command) + " --help")));
        return ExitCode.BAD_INPUT;
    }

    private static String called(CommandLine command) {
        return command.getParent() == null ? "borderwright" : "borderwright " + command.getCommandName();
    }

    private static Message message(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (fault instanceof MissingParameterException missing) {
            return missing(missing);
        }
        if (fault instanceof OverwrittenOptionException twice) {
            return UsageMessage.OPTION_TWICE.of(name(twice.getOverwritten()));
        }
        if (fault instanceof MaxValuesExceededException) {
            return UsageMessage.OPTION_TWICE.of(name(fault.getArgSpec()));
        }
        return value(fault);
    }

    private static Message unmatched(UnmatchedArgumentException fault) {
        CommandLine command = fault.getCommandLine();
        String first = fault.getUnmatched().get(0);
        if (first.startsWith("-")) {
            List<String> options =
                    command.getCommandSpec().optionsMap().keySet().stream().toList();
            return UsageMessage.OPTION_UNKNOWN.of(called(command), first, NearestName.perhaps(first, options));
        }
        Collection<String> commands = command.getSubcommands().keySet();
        return commands.isEmpty()
                ? UsageMessage.ARGUMENT_TOO_MANY.of(called(command), first)
                : UsageMessage.COMMAND_UNKNOWN.of(first, NearestName.perhaps(first, commands), List.copyOf(commands));
    }

    private static Message missing(MissingParameterException fault) {
        List<Object> names = new ArrayList<>();
        fault.getMissing().forEach(arg -> names.add(written(arg)));
        ArgSpec only = fault.getArgSpec();
        if (only != null && fault.getMissing().isEmpty()) {
            return UsageMessage.OPTION_WITHOUT_VALUE.of(name(only), only.paramLabel());
        }
        return UsageMessage.OPTION_MISSING.of(called(fault.getCommandLine()), List.copyOf(names));
    }

    private static Message value(ParameterException fault) {
        ArgSpec arg = fault.getArgSpec();
        String given = Optional.ofNullable(fault.getValue()).orElse("");
        if (arg == null) {
            return UsageMessage.OPTION_WRONG.of(called(fault.getCommandLine()), String.valueOf(fault.getMessage()));
        }
        Class<?> type = arg.type();
        if (type == Path.class) {
            return UsageMessage.OPTION_NOT_A_PATH.of(given);
        }
        if (type.isEnum()) {
            List<Object> choices = new ArrayList<>();
            for (Object constant : type.getEnumConstants()) {
                choices.add(((Enum<?>) constant).name().toLowerCase(Locale.ROOT));
            }
            return UsageMessage.OPTION_NOT_A_CHOICE.of(name(arg), given, List.copyOf(choices));
        }
        if (arg.converters().length == 0 && (type == BigDecimal.class || type == Double.class)) {
            return UsageMessage.OPTION_NOT_A_NUMBER.of(name(arg), given, "9.60");
        }
        if (arg.converters().length == 0) {
            return UsageMessage.OPTION_NOT_A_WHOLE_NUMBER.of(name(arg), given);
        }
        // Our own converters say it in our words already.
        Throwable said = fault.getCause();
        return UsageMessage.OPTION_WRONG.of(name(arg), String.valueOf((said == null ? fault : said).getMessage()));
    }

    private static String name(@Nullable ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg == null ? "" : arg.paramLabel();
    }

    private static String written(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() + " " + option.paramLabel() : arg.paramLabel();
    }
}
