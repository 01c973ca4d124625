package batchwright.app;

import java.util.Optional;

/**
 * A price as the user types it, in the words of foods/shop.csv.
 *
 * @param pack its contents, such as 500g or 4 x 400 g
 * @param label what the shelf says, such as bag
 */
public record SeenPrice(String shop, String pack, Optional<String> label, String price) {}
