package borderwright.app.plan;

import borderwright.pack.sheets.saw.CardText;

/** One word of a card exchanged for another. */
enum CardSlip {
    LEAN,
    FACE,
    KEEP,
    POINT;

    CardText in(CardText c) {
        return switch (this) {
            case LEAN ->
                with(
                        exchanged(c.title(), "left", "right"),
                        c.how().to(),
                        exchanged(c.how().setting(), "left", "right"),
                        c.how().face(),
                        c.how().keep(),
                        c);
            case FACE ->
                with(
                        c.title(),
                        c.how().to(),
                        c.how().setting(),
                        exchanged(c.how().face(), "up", "DOWN"),
                        c.how().keep(),
                        c);
            case KEEP ->
                with(
                        c.title(),
                        c.how().to(),
                        c.how().setting(),
                        c.how().face(),
                        exchanged(c.how().keep(), "LEFT", "RIGHT"),
                        c);
            case POINT ->
                with(
                        c.title(),
                        exchanged(exchanged(c.how().to(), "top face", "underside"), "far", "near"),
                        c.how().setting(),
                        c.how().face(),
                        c.how().keep(),
                        c);
        };
    }

    private static CardText with(String title, String to, String setting, String face, String keep, CardText c) {
        return new CardText(
                c.number(),
                title,
                c.stop(),
                new CardText.How(to, setting, face, keep),
                c.pieces(),
                c.countWords(),
                c.tally());
    }

    private static String exchanged(String text, String one, String other) {
        return text.contains(one) ? text.replace(one, other) : text.replace(other, one);
    }
}
