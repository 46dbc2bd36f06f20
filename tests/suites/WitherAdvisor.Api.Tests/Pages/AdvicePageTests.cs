using WitherAdvisor.Api.Pages.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Plans;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class AdvicePageTests
{
    [Fact]
    public async Task The_three_numbers_come_first_each_with_what_belongs_to_it()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() });

        string card = page[..page.IndexOf("Set, hour by hour", StringComparison.Ordinal)];
        AirSetting first = Sample.Settings[0];
        Assert.Contains($"{first.Plenum.DryBulbC:F1} °C dry bulb", card, StringComparison.Ordinal);
        Assert.Contains($"wet bulb {first.Plenum.WetBulbC:F1} °C", card, StringComparison.Ordinal);
        Assert.Contains("difference (HD) 9.0 °C", card, StringComparison.Ordinal);
        Assert.Contains($"hot air in the mix {first.HotAirShare * 100:F0} % by mass", card, StringComparison.Ordinal);
        Assert.Contains("To rolling Wed 04:34 12 h 24 min", card, StringComparison.Ordinal);
        Assert.Contains("ready likely 03:05 to Wed 06:30", card, StringComparison.Ordinal);
        Assert.Contains("every 2 h 18:10 20:10 22:10 00:10 02:10 04:10", card, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_keeps_the_order_in_which_a_person_needs_it()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() with { LotWarnings = ["Two lots lie on it."] } });

        string[] order = ["Under the mesh", "Two lots lie on it.", "Set, hour by hour", "Weigh and compare", "Why", "Expected drying", "What was assumed", "Take care", "Advise again"];
        int[] places = [.. order.Select(words => page.IndexOf(words, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public async Task Hours_into_the_wither_the_setting_of_that_hour_stands_large()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View(hoursNow: 5.5) });

        Assert.Contains($"from Tue 21:10 {Sample.Settings[5].Plenum.DryBulbC:F1} °C dry bulb", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leaf_left_past_its_stop_is_asked_after_and_its_plan_shown_from_the_start()
    {
        string html = await PageText.Html<AdvicePage>(new { View = Sample.View(hoursNow: 13) });

        string page = PageText.Read(html);
        Assert.Contains("This plan’s stop, Wed 15 Jul 2026, 04:34, has passed.", page, StringComparison.Ordinal);
        Assert.Contains($"from Tue 16:10 {Sample.Settings[0].Plenum.DryBulbC:F1} °C dry bulb", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"past\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Turns_that_are_over_are_marked_while_the_plan_runs() =>
        Assert.Equal(3, (await PageText.Html<AdvicePage>(new { View = Sample.View(hoursNow: 6.5) })).Split("class=\"past\"").Length - 1);

    [Fact]
    public async Task Fahrenheit_and_pounds_reach_every_number()
    {
        PersonUnits imperial = new(TemperatureScale.Fahrenheit, WeightUnit.Pound);

        string html = await PageText.Html<AdvicePage>(new { View = Sample.View(units: imperial) });

        string page = PageText.Read(html);
        string body = page[page.IndexOf("Invented Hill", StringComparison.Ordinal)..];
        Assert.Contains("difference (HD) 16.2 °F", body, StringComparison.Ordinal);
        Assert.Contains("2593 lb green, 5.7 lb/ft²", body, StringComparison.Ordinal);
        Assert.Contains("a sample that weighed 10 lb at loading: 8.54 lb", body, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", body, StringComparison.Ordinal);
        Assert.DoesNotContain(" kg", body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_difference_is_to_be_held_when_the_night_is_another_one() => Assert.Contains(
        Cautions.HoldTheDifference(Wordbook.English), await PageText.Of<AdvicePage>(new { View = Sample.View() }), StringComparison.Ordinal);

    [Fact]
    public async Task What_matters_most_for_the_batch_stands_under_why()
    {
        InputSensitivity bar = new("surface_water", SensitivityReach.P10ToP90, "kg/kg", 0.1, 0.2, 0.3, 10, 9, 11, null);

        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() with { Sensitivity = new(10, new(8, 10, 12), [bar]) } });

        Assert.Contains("What matters most for this batch Water on the leaf: at 0.10 kg/kg ready 1.0 h sooner, at 0.30 kg/kg 1.0 h later.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Why_can_be_read_aloud()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() });

        Assert.Contains("Without the rain or dew on the leaf: 2.4 h shorter, plenum 1.2 °C cooler, turned every 1 h.", page, StringComparison.Ordinal);
        Assert.Contains("Wet spell. Rain of the last days is on the leaf", page, StringComparison.Ordinal);
        Assert.Contains("Roll later: by 1.5 h.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bare_percent_wither_is_nowhere()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() });

        Assert.DoesNotMatch("(?i)% wither", page);
        Assert.Contains("outturn on green weight 41.7 %", page, StringComparison.Ordinal);
        Assert.Contains("moisture, wet basis 57.2 to 63.1 %", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_assumed_and_every_caution_are_told()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View() });

        Assert.Contains("There is no forecast of the outside air for 11 of the 12 hours", page, StringComparison.Ordinal);
        Assert.Contains("Radiation was not measured in 72 of the 72 hours", page, StringComparison.Ordinal);
        Assert.All(Cautions.All(Wordbook.English), caution => Assert.Contains(caution.Full, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_refusal_says_which_limit_binds_and_what_would_relieve_it()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View(Sample.Refused) });

        Assert.Contains("No plan keeps within the limits", page, StringComparison.Ordinal);
        Assert.Contains("Longest time since plucking: at most 24.0 h; the plan comes to 27.3 h.", page, StringComparison.Ordinal);
        Assert.Contains("Spread the leaf thinner: 19.0 kg/m².", page, StringComparison.Ordinal);
        Assert.Contains("Read dry and wet bulb at the loft and enter them.", page, StringComparison.Ordinal);
        Assert.Contains("Water on the leaf", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hostile_label_is_shown_as_typed_and_never_as_markup()
    {
        LeafLabel hostile = new("<script>alert(1)</script>", "\" onmouseover=\"x", "</title><b>", null, null);

        string html = await PageText.Html<AdvicePage>(new { View = Sample.View(batch: Sample.Batch with { Batch = Sample.Batch.Batch with { Label = hostile } }) });

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.DoesNotContain(" onmouseover=\"", html, StringComparison.Ordinal);
        Assert.Contains("<script>alert(1)</script>", PageText.Read(html), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_has_no_script_no_inline_style_and_loads_nothing_from_elsewhere()
    {
        string html = await PageText.Html<AdvicePage>(new { View = Sample.View() });

        Assert.DoesNotMatch("(?i)<script|javascript:| on[a-z]+=| style=", html);
        Assert.DoesNotMatch("(?i)(src|href)=\"(https?:)?//", html);
    }

    [Fact]
    public async Task Leaf_that_is_off_the_trough_has_nothing_left_to_press()
    {
        string page = await PageText.Of<AdvicePage>(new { View = Sample.View(batch: Sample.Batch with { UnloadedAt = Sample.LoadedAt.AddHours(12), Ended = BatchEnd.Unloaded }) });

        Assert.Contains("Off the trough since Wed 04:10.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Advise again", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_form_carries_a_token_against_forgery()
    {
        string html = await PageText.Html<AdvicePage>(new { View = Sample.View() });

        int forms = html.Split("<form").Length - 1;
        Assert.True(forms >= 2);
        Assert.Equal(forms, html.Split("token-of-this-page").Length - 1);
    }
}
