package borderwright.pack.sheets;

import borderwright.engine.plan.Plan;

/**
 * Why this basket and no other.
 *
 * @param plan the plan
 */
public record BasketSheet(Plan plan) implements Sheet {
    /** Whether there is anything to tell. */
    public static boolean isOf(Plan plan) {
        return !plan.basket().reasons().isEmpty();
    }

    @Override
    public String title() {
        return "Why this basket";
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }
}
