package borderwright.app.document;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.fault;
import static borderwright.engine.message.Slot.further;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Faults of a whole document: its size, its bytes, its YAML or JSON, its variants. */
enum DocumentMessage implements MessageCode {
    DOCUMENT_TOO_BIG(count("most")),
    DOCUMENT_IN_UTF16,
    DOCUMENT_NOT_UTF8,
    CONTROL_CHARACTER(text("character")),
    DOCUMENT_SEVERAL,
    DOCUMENT_EMPTY,
    DOCUMENT_TOO_LONG(count("most")),
    DOCUMENT_TOO_DEEP(count("most")),
    DOCUMENT_NOT_A_GROUP,
    GROUP_TOO_LONG(count("most")),
    TEXT_TOO_LONG(count("characters"), count("most")),
    ALIAS,
    TAG,
    TOO_MANY_FAULTS(count("most")),
    KEY_NOT_A_WORD,
    KEY_TWICE(text("key"), count("line")),
    SYNTAX_NEITHER_YAML_NOR_JSON,
    SYNTAX_TAB,
    SYNTAX_FIRST_CHARACTER(text("character")),
    SYNTAX_COLON,
    /** {@code opened} is one of the two places; {@code bracket} is the one that closes it. */
    SYNTAX_BRACKET(message("opened"), text("bracket")),
    SYNTAX_QUOTES,
    SYNTAX_ESCAPE,
    SYNTAX_COLON_MISSING,
    SYNTAX_INDENTATION(message("opened")),
    SYNTAX_AFTER_END,
    SYNTAX_FROM_HERE,
    OPENED_AT(count("line"), count("column")),
    OPENED_EARLIER,
    VARIANTS_NOT_A_LIST(text("example")),
    VARIANTS_TOO_MANY(count("variants"), count("most")),
    VARIANT_NOT_A_GROUP(text("example")),
    VARIANT_KEY_UNKNOWN(text("key"), further("perhaps")),
    VARIANT_WITHOUT_NAME,
    VARIANT_NAME_TWICE(text("name")),
    VARIANT_CHANGES_NOTHING(text("example")),
    /** A fault at {@code path}, in an unchanged part of the garden, that only the changes make. */
    VARIANT_AT_FAULT(text("path"), count("line"), fault("fault"));

    private final List<Slot> slots;

    DocumentMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
