package telltally.trainer.drill;

/**
 * What an answer says about one skill.
 *
 * @param item what in that skill it was about: a digit, a code of a list ({@code plank 34}); empty where there is no such
 */
public record Credit(Skill skill, Level level, String item, boolean right) {}
