using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Words.Tests;

public sealed class EveryMemberMakesASentenceTests
{
    [Fact]
    public void Every_limit_makes_a_sentence_with_what_is_allowed_and_what_is_reached() =>
        Assert.All(Enum.GetValues<LimitKind>().Except([LimitKind.AmbientAir]), limit =>
        {
            string sentence = LimitWording.Sentence(Wordbook.English, new LimitNotice(limit, 0.25, 0.5), PersonUnits.Usual);
            Assert.Matches(@"^[A-Z].*[^0-9](0\.3|0\.2|25\.0).*[^0-9](0\.5|50\.0).*\.$", sentence);
        });

    [Fact]
    public void Every_limit_makes_a_sentence_where_something_is_not_known() => Assert.All(
        Enum.GetValues<LimitKind>(),
        limit => Assert.All(
            new (double?, double?)[] { (null, null), (null, 0.5), (0.25, null) },
            known => Assert.EndsWith(".", LimitWording.Sentence(Wordbook.English, new LimitNotice(limit, known.Item1, known.Item2), PersonUnits.Usual), StringComparison.Ordinal)));

    [Fact]
    public void Every_relief_is_something_to_do_with_and_without_an_amount()
    {
        AllDistinct<ReliefKind>(kind => ReliefWording.Sentence(Wordbook.English, new Relief(kind, 2), PersonUnits.Usual));
        AllDistinct<ReliefKind>(kind => ReliefWording.Sentence(Wordbook.English, new Relief(kind, null), PersonUnits.Usual));
    }

    [Fact]
    public void Every_reading_that_would_help_is_asked_for() =>
        AllDistinct<WantedKind>(kind => WantedWording.Sentence(Wordbook.English, new WantedReading(kind), new WallClock("Etc/UTC")));

    [Fact]
    public void Every_rule_of_a_spell_makes_a_sentence()
    {
        Spell spell = new(SpellKind.Ordinary, 7, 44, 0.93, 0.04, 1.2, 3.1);
        AllDistinct<SpellReason>(reason => SpellReasonWording.Sentence(Wordbook.English, new(spell, 0.02, reason), new SpellThresholds()));
        Spell unknown = new(SpellKind.Ordinary, null, null, null, null, null, 3.1);
        AllDistinct<SpellReason>(reason => SpellReasonWording.Sentence(Wordbook.English, new(unknown, 0, reason), new SpellThresholds()));
    }

    private static void AllDistinct<T>(Func<T, string> words)
        where T : struct, Enum
    {
        string[] all = [.. Enum.GetValues<T>().Select(words)];
        Assert.All(all, text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Equal(all.Length, all.Distinct(StringComparer.Ordinal).Count());
    }
}
