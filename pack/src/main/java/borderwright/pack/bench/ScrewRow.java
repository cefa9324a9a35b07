package borderwright.pack.bench;

/**
 * A line of a table of fixings, as printed.
 *
 * @param fixing its name and holes
 * @param where how they are spread over the boards
 * @param places each place with what it holds
 * @param count how many in all
 */
public record ScrewRow(String fixing, String where, String places, int count) {}
