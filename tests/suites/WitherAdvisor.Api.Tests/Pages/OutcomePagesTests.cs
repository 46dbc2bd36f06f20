using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Pages.Closing;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Log;
using WitherAdvisor.Api.Pages.Outcomes;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Outcomes;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

/// <summary>Ending a batch, saying what came of it, and looking at the log, as a person does.</summary>
public sealed class OutcomePagesTests : IDisposable
{
    private const string Log = "loaded_at,trough,division,field,green_weight_kg,on_trough_hours,withered_weight_kg,cultivar\n"
        + "2025-06-01 17:30,t1,Upper,Field 7,1200,11,580,Clone A\n2025-06-02 17:30,t1,Upper,Field 8,1200,2,580,\n2025-06-03 17:30,t9,Upper,Field 9,1200,11,580,\n";

    private readonly PageHost host = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private IBatchStore Batches => host.Services.GetRequiredService<IBatchStore>();

    private IOutcomeStore Outcomes => host.Services.GetRequiredService<IOutcomeStore>();

    [Fact]
    public async Task A_batch_is_cancelled_on_its_page_with_a_reason_and_its_page_says_so()
    {
        string batch = await Entered();

        using HttpResponseMessage without = await host.Send(batch, batch + "/cancelled", Time(ClosingForm.CancelledAt, "18:00"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, without.StatusCode);
        Assert.True((await Find(batch)).IsRunning);

        using HttpResponseMessage done = await host.Send(
            batch, batch + "/cancelled", [.. Time(ClosingForm.CancelledAt, "18:00"), (ClosingForm.CancelReason, "The fan failed")]);
        Assert.Equal(HttpStatusCode.SeeOther, done.StatusCode);
        Assert.Equal((BatchEnd.Cancelled, "The fan failed"), ((await Find(batch)).Ended, (await Find(batch)).EndReason));
        Assert.Contains("The fan failed", await host.Page(batch), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_is_mixed_into_another_that_its_page_offers()
    {
        string little = await Entered();
        string large = await Entered((Api.Pages.Batches.BatchForm.Trough, "t1"), (Api.Pages.Batches.BatchForm.Field, "Field 9"));
        Assert.Contains($"value=\"{Id(large)}\"", await host.Page(little), StringComparison.Ordinal);

        using HttpResponseMessage done = await host.Send(
            little, little + "/mixed", [.. Time(ClosingForm.MixedAt, "18:00"), (ClosingForm.MixedInto, Id(large)), (ClosingForm.MixReason, "Too little")]);

        Assert.Equal(HttpStatusCode.SeeOther, done.StatusCode);
        Assert.Equal(Id(large), (await Find(little)).MixedIntoId);
    }

    [Fact]
    public async Task Leaf_that_was_off_its_trough_earlier_is_unloaded_at_that_time_and_once()
    {
        string batch = await Entered();

        using HttpResponseMessage early = await host.Send(batch, batch + "/unloaded", Time(ClosingForm.UnloadedAt, "15:00"));
        Assert.Equal(HttpStatusCode.BadRequest, early.StatusCode);
        string drawn = await host.Page(batch);
        using HttpResponseMessage done = await host.Send(batch, batch + "/unloaded", Time(ClosingForm.UnloadedAt, "22:30"));
        Assert.Equal(HttpStatusCode.SeeOther, done.StatusCode);
        Assert.Equal(6.33, ((await Find(batch)).UnloadedAt!.Value - (await Find(batch)).Batch.LoadedAt).TotalHours, 2);
        Assert.Contains("/outcome", await host.Page(batch), StringComparison.Ordinal);
        Assert.Contains("Cancel the batch", drawn, StringComparison.Ordinal);
        Assert.DoesNotContain("Cancel the batch", await host.Page(batch), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_came_of_a_batch_is_entered_in_the_persons_units_and_stands_in_the_form_again()
    {
        string outcome = await Unloaded() + "/outcome";
        await Outcomes.PutScales("invented-hill", [new TasterScale("Briskness", 0, 10)], Cancel);

        using HttpResponseMessage done = await host.Send(
            outcome + "?weight=lb&temperature=f", outcome,
            (OutcomeForm.Withered, "1200"), (OutcomeForm.Oven, "60"), (OutcomeForm.Verdict, "Right"), (OutcomeForm.TurnedAt, "2; 4"),
            (OutcomeForm.Air(OutcomeForm.AirMeasured, 0, "dry_bulb_c"), "79.7"), (OutcomeForm.Air(OutcomeForm.AirMeasured, 0, "wet_bulb_c"), "66.2"),
            (OutcomeForm.Sample(0, "hour"), "3"), (OutcomeForm.Sample(0, "weight_percent"), "75"),
            (OutcomeForm.Mark(0), "7.5"), (OutcomeForm.Faults, "red leaf; stalk"), (OutcomeForm.EnteredBy, "night maker"));

        Assert.Equal(HttpStatusCode.SeeOther, done.StatusCode);
        StoredOutcome kept = (await Outcomes.Find(Id(outcome), Cancel))!;
        Assert.Equal(1200 * 0.45359237, kept.Outcome.WitheredWeightKg!.Value, 9);
        Assert.Equal((26.5, 19.0), (Math.Round(kept.Outcome.AirMeasured[0].DryBulbC!.Value, 9), Math.Round(kept.Outcome.AirMeasured[0].WetBulbC!.Value, 9)));
        Assert.Equal(["red leaf", "stalk"], kept.Outcome.Faults);
        Assert.Equal((2, 7.5, "night maker"), (kept.Outcome.Turns, kept.Outcome.Marks[0].Mark, kept.EnteredBy));
        string page = await host.Page(outcome);
        Assert.Contains("value=\"1200\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"79.7\"", page, StringComparison.Ordinal);
        Assert.Contains("46.3 %", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_odd_is_asked_about_on_the_page_and_kept_once_it_is_ticked()
    {
        string outcome = await Unloaded() + "/outcome";
        string air = OutcomeForm.Air(OutcomeForm.AirSet, 0, "dry_bulb_c");

        using HttpResponseMessage asked = await host.Send(outcome, outcome, (air, "36"));
        string page = await asked.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, asked.StatusCode);
        Assert.Contains("value=\"air_too_hot\"", page, StringComparison.Ordinal);
        Assert.Contains("value=\"36\"", page, StringComparison.Ordinal);
        Assert.Null(await Outcomes.Find(Id(outcome), Cancel));

        using HttpResponseMessage kept = await host.Send(outcome, outcome, (air, "36"), (OutcomeForm.Confirm, "air_too_hot"));
        Assert.Equal(HttpStatusCode.SeeOther, kept.StatusCode);
        Assert.Equal(["air_too_hot"], (await Outcomes.Find(Id(outcome), Cancel))!.Confirmed);
    }

    [Theory]
    [InlineData(OutcomeForm.Withered, "much", OutcomeForm.Withered)]
    [InlineData(OutcomeForm.Withered, "1177", OutcomeForm.Withered)]
    [InlineData(OutcomeForm.TurnedAt, "3; soon", OutcomeForm.TurnedAt)]
    [InlineData(OutcomeForm.TurnedAt, "4; 3", "turned_at_hours[1]")]
    [InlineData("air_measured[1].wet_bulb_c", "99", "air_measured[1].wet_bulb_c")]
    [InlineData(OutcomeForm.Verdict, "Burnt", OutcomeForm.Verdict)]
    public async Task A_mistake_comes_back_with_what_was_typed_and_keeps_nothing(string field, string typed, string named)
    {
        string outcome = await Unloaded() + "/outcome";

        using HttpResponseMessage answer = await host.Send(outcome, outcome, (field, typed), (OutcomeForm.Note, "still here"));

        string page = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains($"href=\"#{named}\"", page, StringComparison.Ordinal);
        Assert.Contains("still here", page, StringComparison.Ordinal);
        Assert.Null(await Outcomes.Find(Id(outcome), Cancel));
    }

    [Fact]
    public async Task A_running_batch_has_a_page_of_its_outcome_without_a_form()
    {
        string page = await host.Page(await Entered() + "/outcome");

        Assert.Contains("still on its trough", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Save the outcome", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_is_previewed_and_then_taken_from_the_preview()
    {
        await host.WithSite();
        const string import = "/sites/invented-hill/outcomes/import";

        string preview = await Upload(import, Log);
        Assert.Contains("nothing is saved yet", preview, StringComparison.Ordinal);
        Assert.Contains("Line 4: has errors", preview, StringComparison.Ordinal);
        Assert.Contains("Line 3: looks odd", preview, StringComparison.Ordinal);
        Assert.Empty(await Batches.List("invented-hill", 10, Cancel));

        string previewed = WebUtility.HtmlDecode(Regex.Match(preview, "<textarea[^>]*>(?<csv>[^<]*)</textarea>", RegexOptions.NonBacktracking).Groups["csv"].Value);
        using HttpResponseMessage taken = await host.Send(import, import, (ImportPageEndpoints.TextField, previewed), (ImportPageEndpoints.OddField, "yes"));

        Assert.Equal(HttpStatusCode.OK, taken.StatusCode);
        Assert.Contains("Imported", await taken.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        Assert.Equal(2, (await Batches.List("invented-hill", 10, Cancel)).Count);
    }

    [Theory]
    [InlineData("")]
    [InlineData("this is no log\n")]
    public async Task A_file_that_is_no_log_is_refused_in_words(string file)
    {
        await host.WithSite();
        Assert.Contains("The file was not imported", await Upload("/sites/invented-hill/outcomes/import", file, HttpStatusCode.UnprocessableEntity), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_log_shows_hours_beside_those_advised_and_is_filtered()
    {
        string batch = await Unloaded();
        (await host.Browser.PutAsJsonAsync($"/v1{batch}/outcome", new { withered_weight_kg = 560 }, Cancel)).EnsureSuccessStatusCode();
        using StringContent csv = new(Log, Encoding.UTF8, "text/csv");
        (await host.Browser.PostAsync(new Uri("/v1/sites/invented-hill/outcomes/import?mode=take&keep=good_rows", UriKind.Relative), csv, Cancel)).EnsureSuccessStatusCode();

        string all = await host.Page("/sites/invented-hill/outcomes");
        Assert.Contains("2 outcomes", all, StringComparison.Ordinal);
        Assert.Contains("47.6 %", all, StringComparison.Ordinal);
        Assert.Contains($"{batch}/outcome", all, StringComparison.Ordinal);

        string filtered = await host.Page("/sites/invented-hill/outcomes?from=2025-06-01&to=2025-06-01&spell=&cultivar=Clone+A");
        Assert.Contains("1 outcome<", filtered, StringComparison.Ordinal);
        Assert.Contains("from=2025-06-01T00%3A00%3A00%2B05%3A30&amp;to=2025-06-02T00%3A00%3A00%2B05%3A30&amp;cultivar=Clone%20A", filtered, StringComparison.Ordinal);
        Assert.Contains("No outcomes", await host.Page("/sites/invented-hill/outcomes?spell=DryWindy"), StringComparison.Ordinal);
        Assert.Contains("Write a date such as", await host.Page("/sites/invented-hill/outcomes?from=yesterday"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_off_a_paper_log_shows_what_came_of_it_in_place_of_an_advice()
    {
        await host.WithSite();
        using StringContent csv = new(Log, Encoding.UTF8, "text/csv");
        (await host.Browser.PostAsync(new Uri("/v1/sites/invented-hill/outcomes/import?mode=take&keep=good_rows", UriKind.Relative), csv, Cancel)).EnsureSuccessStatusCode();
        string batch = $"/batches/{Assert.Single(await Batches.List("invented-hill", 10, Cancel)).Id}";

        using HttpResponseMessage answer = await host.Browser.GetAsync(new Uri(batch, UriKind.Relative), Cancel);

        Assert.Equal((HttpStatusCode.SeeOther, batch + "/outcome"), (answer.StatusCode, answer.Headers.Location!.ToString()));
        Assert.Contains("48.3 %", await host.Page(batch + "/outcome"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/batches/nothing/outcome")]
    [InlineData("/sites/nowhere/outcomes")]
    [InlineData("/sites/nowhere/outcomes/import")]
    [InlineData("/sites/nowhere/season")]
    public async Task What_is_not_kept_here_is_said_to_be_so(string address)
    {
        using HttpResponseMessage answer = await host.Browser.GetAsync(new Uri(address, UriKind.Relative), Cancel);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    public void Dispose() => host.Dispose();

    private static (string Field, string Typed)[] Time(string field, string clock) =>
        [(TimeFields.Date(field), "2026-07-14"), (TimeFields.Time(field), clock)];

    private static string Id(string address) => address.Split('/')[2];

    private async Task<StoredBatch> Find(string address) => (await Batches.Find(Id(address), Cancel))!;

    private async Task<string> Entered(params (string Field, string Typed)[] changes)
    {
        await host.WithSite();
        using HttpResponseMessage answer = await host.Send(PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch(changes));
        return answer.Headers.Location!.ToString();
    }

    private async Task<string> Unloaded()
    {
        string batch = await Entered();
        using HttpResponseMessage done = await host.Send(batch, batch + "/unloaded", Time(ClosingForm.UnloadedAt, "22:10"));
        return batch;
    }

    private async Task<string> Upload(string address, string file, HttpStatusCode expected = HttpStatusCode.OK)
    {
        string page = await host.Page(address);
        string token = Regex.Match(page, "name=\"__RequestVerificationToken\" value=\"(?<token>[^\"]+)\"", RegexOptions.NonBacktracking).Groups["token"].Value;
        using MultipartFormDataContent form = new()
        {
            { new StringContent(token), "__RequestVerificationToken" },
            { new ByteArrayContent(Encoding.UTF8.GetBytes(file)), ImportPageEndpoints.FileField, "log.csv" },
        };
        using HttpResponseMessage answer = await host.Browser.PostAsync(new Uri(address, UriKind.Relative), form, Cancel);
        Assert.Equal(expected, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(Cancel);
    }
}
