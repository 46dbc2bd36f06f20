using WitherAdvisor.Api.Tests.Recalibration;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class CalibrationPageTests(RunningService service)
{
    [Fact]
    public async Task A_maker_reads_what_was_learned_and_what_it_rests_on()
    {
        LoftWithPast loft = await LoftWithPast.Open(service, PastOfLoft.Make(outcomes: 40, days: 150, seed: 7));
        string address = $"/sites/{loft.Loft.Site}/calibration";
        string empty = (await loft.Caller.Get(address)).Expect(200).Text;
        Assert.Contains("What to measure next", empty);
        Assert.DoesNotContain("Predicted against actual", empty);

        await loft.Recalibrate();

        string page = (await loft.Caller.Get(address)).Expect(200).Text;
        Assert.Contains("Your leaf gives up its water", page);
        Assert.Contains("On the latest 10 outcomes, fitted on the 30 before", page);
        Assert.Contains("Table of averages", page);
        Assert.Contains("By weather", page);
        Assert.Contains("By hour of loading", page);
        Assert.Contains("By cultivar", page);
        Assert.DoesNotContain(">-0<", page);
        Assert.Contains("40 outcomes used, 0 left out", page);
        // A mark for each outcome in each of the two pictures, and none outside of them.
        Assert.InRange(System.Text.RegularExpressions.Regex.Count(page, "<circle r=\"2.5\""), 70, 80);
        Assert.Contains("Adopt learned-1", page);
    }

    [Fact]
    public async Task What_a_browser_did_not_get_from_the_page_changes_nothing()
    {
        TestLoft loft = await TestLoft.Open(service);

        Reply reply = await loft.Caller.PostText($"/sites/{loft.Site}/calibration/recalibrate", "", "application/x-www-form-urlencoded");

        reply.Expect(400);
        Assert.Empty((await loft.Caller.Get(loft.Path + "/recalibrations")).Expect(200).Json.AsArray());
    }
}
