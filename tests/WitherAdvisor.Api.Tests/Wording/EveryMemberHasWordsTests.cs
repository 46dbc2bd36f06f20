using WitherAdvisor.Air;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Api.Wording;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Spells;
using WitherAdvisor.Review;
using Xunit;

namespace WitherAdvisor.Api.Tests.Wording;

public sealed class EveryMemberHasWordsTests
{
    [Fact]
    public void Every_stage_has_a_name_and_a_purpose()
    {
        AllDistinct<StageKind>(StageWording.Name);
        AllDistinct<StageKind>(StageWording.Purpose);
    }

    [Fact]
    public void Every_spell_has_a_name_and_a_meaning()
    {
        AllDistinct<SpellKind>(SpellWording.Name);
        AllDistinct<SpellKind>(SpellWording.Meaning);
    }

    [Fact]
    public void Every_limit_has_a_name() => AllDistinct<LimitKind>(LimitWording.Name);

    [Fact]
    public void Every_limit_makes_a_sentence_with_what_is_allowed_and_what_is_reached() =>
        Assert.All(Enum.GetValues<LimitKind>().Except([LimitKind.AmbientAir]), limit =>
        {
            string sentence = LimitWording.Sentence(new LimitNotice(limit, 0.25, 0.5), PersonUnits.Usual);
            Assert.Matches(@"^[A-Z].*[^0-9](0\.3|0\.2|25\.0).*[^0-9](0\.5|50\.0).*\.$", sentence);
        });

    [Fact]
    public void Every_relief_is_something_to_do_with_and_without_an_amount()
    {
        AllDistinct<ReliefKind>(kind => ReliefWording.Sentence(new Relief(kind, 2), PersonUnits.Usual));
        AllDistinct<ReliefKind>(kind => ReliefWording.Sentence(new Relief(kind, null), PersonUnits.Usual));
    }

    [Fact]
    public void Every_origin_of_an_estimate_has_words() => AllDistinct<EstimateOrigin>(EstimateWording.Origin);

    [Fact]
    public void Every_feel_and_every_standard_has_a_name_and_a_test_by_hand_or_eye()
    {
        AllDistinct<SurfaceFeel>(LeafWording.Name);
        AllDistinct<SurfaceFeel>(LeafWording.Test);
        AllDistinct<LeafStandard>(LeafWording.Name);
        AllDistinct<LeafStandard>(LeafWording.Test);
    }

    [Fact]
    public void Every_bush_age_and_every_instrument_has_a_name()
    {
        AllDistinct<BushAge>(LeafWording.Name);
        AllDistinct<PsychrometerKind>(PsychrometerWording.Name);
    }

    [Fact]
    public void Every_quantity_and_every_way_of_knowing_has_a_name()
    {
        AllDistinct<WeatherQuantity>(HoleWording.Name);
        AllDistinct<ValueStanding>(StandingWording.Name);
        AllDistinct<WantedKind>(kind => WantedWording.Sentence(new WantedReading(kind), new WallClock("Etc/UTC")));
        AllDistinct<SpellKind>(SpellWording.Short);
        AllDistinct<KeptRows>(UploadWording.Name);
        AllDistinct<KeptRows>(UploadWording.Test);
        AllDistinct<WeatherKind>(UploadWording.Name);
    }

    [Fact]
    public void Every_rule_of_a_spell_makes_a_sentence()
    {
        Spell spell = new(SpellKind.Ordinary, 7, 44, 0.93, 0.04, 1.2, 3.1);
        AllDistinct<SpellReason>(reason => SpellReasonWording.Sentence(new(spell, 0.02, reason), new SpellThresholds()));
        Spell unknown = new(SpellKind.Ordinary, null, null, null, null, null, 3.1);
        AllDistinct<SpellReason>(reason => SpellReasonWording.Sentence(new(unknown, 0, reason), new SpellThresholds()));
    }

    [Fact]
    public void Every_part_of_the_model_every_status_and_every_reach_has_a_name()
    {
        AllDistinct<ModelTopic>(BasisWording.Name);
        AllDistinct<CoefficientStatus>(BasisWording.Name);
        AllDistinct<SensitivityReach>(SensitivityWording.Name);
    }

    private static void AllDistinct<T>(Func<T, string> words)
        where T : struct, Enum
    {
        string[] all = [.. Enum.GetValues<T>().Select(words)];
        Assert.All(all, text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Equal(all.Length, all.Distinct(StringComparer.Ordinal).Count());
    }
}
