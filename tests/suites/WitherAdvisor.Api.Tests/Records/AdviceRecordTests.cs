using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using Xunit;

namespace WitherAdvisor.Api.Tests.Records;

/// <summary>An advice kept and opened again is the advice that was given.</summary>
public sealed class AdviceRecordTests
{
    private static readonly AdviceInputs Inputs = AdviceRequestMapping.ToDomain(InventedAdvice.Input("rain-wet"));
    private static readonly AdviceOutcome Outcome = Advisor.Advise(Inputs.Request);
    private static readonly KeptAdvice Kept = Keep(Inputs, Outcome);

    [Fact]
    public void What_was_advised_comes_back_to_the_last_digit() =>
        Assert.Equal(JsonSerializer.Serialize<object>(Outcome), JsonSerializer.Serialize<object>(Open(Kept).Outcome));

    [Fact]
    public void What_it_was_made_of_comes_back_to_the_last_digit() =>
        Assert.Equal(JsonSerializer.Serialize(Inputs), JsonSerializer.Serialize(Open(Kept).Inputs));

    [Fact]
    public void Nothing_that_follows_from_the_rest_is_kept_of_a_reading() =>
        Assert.DoesNotContain("tells_", Kept.InputsJson, StringComparison.Ordinal);

    [Fact]
    public void Records_that_kept_it_once_open_alike()
    {
        KeptAdvice once = Kept with
        {
            InputsJson = Kept.InputsJson.Replace("{\"time\":", "{\"tells_humidity\":true,\"tells_anything\":true,\"time\":", StringComparison.Ordinal),
        };
        Assert.NotEqual(Kept.InputsJson, once.InputsJson);

        Assert.Equal(JsonSerializer.Serialize(Inputs), JsonSerializer.Serialize(Open(once).Inputs));
    }

    [Fact]
    public void A_refusal_comes_back()
    {
        AdviceInputs old = Inputs with
        {
            Request = Inputs.Request with
            {
                Readings = [],
                Forecast = [],
            },
        };
        AdviceOutcome refused = Advisor.Advise(old.Request);
        Assert.IsType<AdviceOutcome.CannotAdvise>(refused);

        Assert.Equal(JsonSerializer.Serialize<object>(refused), JsonSerializer.Serialize<object>(Open(Keep(old, refused)).Outcome));
    }

    [Fact]
    public void The_least_bad_plan_comes_back_with_what_it_breaks()
    {
        AdviceInputs old = Inputs with
        {
            Request = Inputs.Request with
            {
                Site = Inputs.Request.Site with { Style = Inputs.Request.Site.Style with { LongestHoursSincePlucking = 1 } },
            },
        };
        var leastBad = Assert.IsType<AdviceOutcome.Advised>(Advisor.Advise(old.Request));
        Assert.True(leastBad.IsLeastBad);

        Assert.Equal(JsonSerializer.Serialize<object>(leastBad), JsonSerializer.Serialize<object>(Open(Keep(old, leastBad)).Outcome));
    }

    [Theory]
    [InlineData("\"stop_hours\":", "\"stop_hours\":1")]
    [InlineData("\"outturn_percent\":", "\"outturn_percent\":1")]
    [InlineData("\"expected_weight_kg\":", "\"expected_weight_kg\":1")]
    [InlineData("\"plenum_dry_bulb_c\":", "\"plenum_dry_bulb_c\":1")]
    public void A_figure_that_was_sent_counts_whatever_is_kept_beside_it(string sent, string altered)
    {
        KeptAdvice otherwise = Kept with { AnswerJson = Kept.AnswerJson.Replace(sent, altered, StringComparison.Ordinal) };
        Assert.NotEqual(Kept.AnswerJson, otherwise.AnswerJson);

        Assert.NotEqual(JsonSerializer.Serialize<object>(Outcome), JsonSerializer.Serialize<object>(Open(otherwise).Outcome));
    }

    [Fact]
    public void A_format_of_a_later_release_is_told_as_such()
    {
        var unreadable = Assert.IsType<OpenedRecord.Unreadable>(AdviceRecords.Open(Kept with { Format = 99 }));

        Assert.Equal((Kept.Id, RecordFault.UnknownFormat, 99), (unreadable.AdviceId, unreadable.Fault, unreadable.Format));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("[1]")]
    [InlineData("{\"plan\":null}")]
    [InlineData("{\"plan\":{\"settings\":7}}")]
    public void Damage_is_told_as_damage(string damaged)
    {
        Assert.Equal(RecordFault.DamagedInputs, Unreadable(Kept with { InputsJson = damaged }).Fault);
        Assert.Equal(RecordFault.DamagedAnswer, Unreadable(Kept with { AnswerJson = damaged }).Fault);
        Assert.Equal(RecordFault.DamagedAnswer, Unreadable(Kept with { OutcomeJson = damaged }).Fault);
    }

    [Fact]
    public void Of_every_place_where_a_record_breaks_off_none_is_read_as_something_else()
    {
        foreach (int length in Enumerable.Range(0, 200).Select(part => part * Kept.AnswerJson.Length / 200))
        {
            Assert.IsType<OpenedRecord.Unreadable>(AdviceRecords.Open(Kept with { AnswerJson = Kept.AnswerJson[..length] }));
        }
    }

    private static KeptAdvice Keep(AdviceInputs inputs, AdviceOutcome outcome) => AdviceRecords.Keep(
        "a-1", "b-1", DateTimeOffset.UnixEpoch, "0.0.0", inputs, outcome, new ResponseWriter().Write(inputs, outcome));

    private static AdviceRecord Open(KeptAdvice kept) => Assert.IsType<OpenedRecord.Readable>(AdviceRecords.Open(kept)).Record;

    private static OpenedRecord.Unreadable Unreadable(KeptAdvice kept) =>
        Assert.IsType<OpenedRecord.Unreadable>(AdviceRecords.Open(kept));
}
