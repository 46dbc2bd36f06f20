using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Sensitivities;

/// <summary>What an input is said to be worth is what really moving it gives, and together the inputs make the stated band.</summary>
public sealed class SensitivityTests(ITestOutputHelper output)
{
    /// <summary>
    /// In a straight model the widths add in squares. Rates multiply, so this one bends a little, and surface water stops
    /// at none: a twentieth. Measured: within a hundredth for the three batches.
    /// </summary>
    private const double RootSumSquareTolerance = 0.05;

    private static readonly AdviceRequest RainWet = InventedBatch.Measured(17, 0.95, 0.80, 0.2);
    private static readonly AdviceRequest DryWindy = InventedBatch.Measured(21, 0.60, 0.75, 0);
    private static readonly AdviceRequest FromWeather = InventedBatch.Under(new(17, 1.5, 16, 2, (days, _) => days < 10 ? 1 : 0));

    public static TheoryData<string> Batches => ["rain-wet", "dry windy", "from weather"];

    [Theory]
    [InlineData("tissue_moisture", true)]
    [InlineData("surface_water", true)]
    [InlineData("green_weight", true)]
    [InlineData("loading_time", true)]
    [InlineData("cuticular_conductance", false)]
    [InlineData("boundary_layer_conductance", false)]
    [InlineData("airflow", false)]
    [InlineData("held_difference", false)]
    public void More_of_it_makes_the_wither_longer_or_shorter_as_nature_has_it(string code, bool longer)
    {
        InputSensitivity bar = Bar(RainWet, code);

        Assert.True(bar.LowValue < bar.PlannedValue && bar.PlannedValue < bar.HighValue);
        Assert.Equal(longer, bar.ChangeAtHighHours > 0);
        Assert.Equal(longer, bar.ChangeAtLowHours < 0);
    }

    [Theory]
    [MemberData(nameof(Batches))]
    public void The_widest_bar_comes_first(string batch)
    {
        double[] widths = [.. Of(Request(batch)).Inputs.Select(bar => bar.WidthHours ?? double.PositiveInfinity)];

        Assert.Equal(widths.OrderDescending(), widths);
        Assert.True(widths[0] > 1, $"{widths[0]} h");
    }

    [Theory]
    [MemberData(nameof(Batches))]
    public void Ends_lie_evenly_about_the_plan_where_the_model_is_nearly_straight(string batch)
    {
        // Second-order terms: where an input of a tenth or so is moved, a quarter of the way out at most; g_0 of a loft that has learned nothing is moved by a half.
        foreach (InputSensitivity bar in Of(Request(batch)).Inputs.Where(bar => bar.Code is "cuticular_conductance" or "tissue_moisture" or "airflow" or "green_weight"))
        {
            double low = Math.Abs(bar.ChangeAtLowHours!.Value);
            double high = Math.Abs(bar.ChangeAtHighHours!.Value);
            Assert.InRange(Math.Abs(high - low) / (high + low), 0, bar.Code == "cuticular_conductance" ? 0.35 : 0.25);
        }
    }

    [Theory]
    [MemberData(nameof(Batches))]
    public void Taken_together_the_bars_are_as_wide_as_the_band_of_the_advice(string batch)
    {
        Sensitivity sensitivity = Of(Request(batch));
        double together = Math.Sqrt(sensitivity.Inputs
            .Where(bar => bar.Reach == SensitivityReach.P10ToP90)
            .Sum(bar => bar.WidthHours!.Value * bar.WidthHours.Value));
        double band = sensitivity.ReadyHours.P90!.Value - sensitivity.ReadyHours.P10!.Value;
        output.WriteLine($"{batch}: {sensitivity.PlannedHours:F2} h, band {band:F3}, together {together:F3}");
        foreach (InputSensitivity bar in sensitivity.Inputs)
        {
            output.WriteLine($"{bar.Code,-22} {bar.LowValue:G4} {bar.PlannedValue:G4} {bar.HighValue:G4} {bar.Unit}: {bar.ChangeAtLowHours:F3} {bar.ChangeAtHighHours:F3}");
        }

        Assert.InRange(together / band, 1 - RootSumSquareTolerance, 1 + RootSumSquareTolerance);
    }

    [Fact]
    public void The_widest_are_those_of_what_is_uncertain_and_not_of_what_may_be_misjudged()
    {
        Sensitivity sensitivity = Of(FromWeather);

        Assert.Equal(sensitivity.Inputs.Where(bar => bar.Reach == SensitivityReach.P10ToP90).Take(2), sensitivity.Widest(2));
        Assert.Contains(sensitivity.Inputs, bar => bar.Reach == SensitivityReach.InputError);
    }

    [Fact]
    public void The_band_is_the_one_that_the_advice_states()
    {
        AdviceOutcome.Advised advised = InventedBatch.Advised(RainWet);

        Assert.Equal(advised.ReadyHours, Of(RainWet).ReadyHours);
        Assert.Equal(advised.Plan.StopHour, Of(RainWet).PlannedHours, 0.2);
    }

    [Fact]
    public void Water_weighed_moves_the_hours_less_than_water_guessed_from_the_weather()
    {
        AdviceRequest weighed = FromWeather with
        {
            Batch = FromWeather.Batch with { MeasuredSurfaceWaterKgPerKg = Bar(FromWeather, "surface_water").PlannedValue },
        };

        Assert.True(Bar(weighed, "surface_water").WidthHours < 0.8 * Bar(FromWeather, "surface_water").WidthHours);
    }

    [Fact]
    public void A_night_that_is_heated_all_through_does_not_pass_on_its_own_air() =>
        Assert.Equal(0, Bar(RainWet, "night_air").WidthHours);

    [Fact]
    public void In_a_night_without_heat_its_own_air_counts_and_nobody_holds_anything()
    {
        AdviceRequest unheated = InventedBatch.Measured(24, 0.45, 0.75, 0);

        Assert.Equal(0, Bar(unheated, "held_difference").WidthHours);
        InputSensitivity night = Bar(unheated, "night_air");
        Assert.True(night.ChangeAtLowHours > 0.1 && night.ChangeAtHighHours < -0.1);
    }

    [Fact]
    public void Leaf_loaded_an_hour_later_than_said_is_ready_about_an_hour_later()
    {
        InputSensitivity bar = Bar(RainWet, "loading_time");

        Assert.Equal(SensitivityReach.InputError, bar.Reach);
        Assert.InRange(bar.ChangeAtHighHours!.Value, 0.8, 1.2);
        Assert.InRange(bar.ChangeAtLowHours!.Value, -1.2, -0.8);
    }

    [Fact]
    public void An_end_that_is_never_reached_says_why_and_comes_first()
    {
        AdviceRequest slow = InventedBatch.Measured(17, 0.95, 0.80, 0.2);
        slow = slow with { Coefficients = slow.Coefficients with { Spreads = slow.Coefficients.Spreads with { CuticularConductance = 2 } } };

        InputSensitivity first = Of(slow).Inputs[0];

        Assert.Equal("cuticular_conductance", first.Code);
        Assert.Null(first.HoursAtLow);
        Assert.Null(first.WidthHours);
        Assert.Equal(27, first.NotReachedWithinHours);
        Assert.NotNull(first.HoursAtHigh);
    }

    [Fact]
    public void Where_only_the_least_bad_can_be_advised_nothing_matters_most()
    {
        AdviceRequest late = RainWet with { Batch = RainWet.Batch with { PluckedFrom = RainWet.Batch.LoadedAt.AddHours(-30) } };
        Assert.True(InventedBatch.Advised(late).IsLeastBad);

        Assert.Null(SensitivityAnalysis.Of(late));
    }

    private static AdviceRequest Request(string batch) => batch switch
    {
        "rain-wet" => RainWet,
        "dry windy" => DryWindy,
        _ => FromWeather,
    };

    private static Sensitivity Of(AdviceRequest request) => Assert.IsType<Sensitivity>(SensitivityAnalysis.Of(request));

    private static InputSensitivity Bar(AdviceRequest request, string code) => Of(request).Inputs.Single(bar => bar.Code == code);
}
