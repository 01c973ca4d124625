package batchwright.person;

import java.math.BigDecimal;

/**
 * Something people do, with what it costs.
 *
 * @param id short name used in profiles, such as desk_work
 * @param code of the Compendium, five digits
 * @param met cost as a multiple of rest, rest included: 1 MET is about 1 kcal per kg and hour
 * @param name in plain words
 */
public record ListedActivity(String id, String code, BigDecimal met, String name) {}
