using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

/// <summary>
/// The bed as a trial runs it, against cases solved by an independent program (50 layers, 60 s); see fixtures/bed/README.md.
/// Hour by hour the cases are held by WitherAdvisor.ReferenceChecks.
/// </summary>
public sealed class LeafBedTests
{
    /// <summary>The cases' own tolerance.</summary>
    private const double HoursTolerance = 0.005;

    /// <summary>The cases' own cut, for what depends on where the layers lie.</summary>
    private static readonly BedResolution AsTheCases = new(50, 60);

    public static TheoryData<string> Cases => [.. BedCase.Ids];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Hours_to_target_agree_at_every_resolution_in_use(string id)
    {
        foreach (BedResolution resolution in new[] { BedResolution.Search, BedResolution.Shown, AsTheCases })
        {
            DryingTrace log = Run(BedCase.Read(id), resolution);
            double expected = BedCase.Read(id).Expected("hours_to_target");
            Assert.InRange(log.TargetHour!.Value / expected, 1 - HoursTolerance, 1 + HoursTolerance);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Surface_dries_when_the_case_says(string id)
    {
        DryingTrace log = Run(BedCase.Read(id), AsTheCases);
        // The case reports the end of the step of 60 s.
        Assert.Equal(BedCase.Read(id).Expected("hours_to_surface_dry"), log.SurfaceDryHour!.Value, 0.03);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Halving_either_step_moves_the_hours_by_less_than_half_a_percent(string id)
    {
        foreach (BedResolution resolution in new[] { BedResolution.Search, BedResolution.Shown })
        {
            double hours = Run(BedCase.Read(id), resolution).TargetHour!.Value;
            double finerLayers = Run(BedCase.Read(id), resolution with { Layers = 2 * resolution.Layers }).TargetHour!.Value;
            double finerTime = Run(BedCase.Read(id), resolution with { LongestStepS = resolution.LongestStepS / 2 }).TargetHour!.Value;
            Assert.InRange(finerLayers / hours, 0.995, 1.005);
            Assert.InRange(finerTime / hours, 0.995, 1.005);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_the_leaf_loses_the_air_gains(string id)
    {
        BedCase bedCase = BedCase.Read(id);
        BedSetup setup = bedCase.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        InletAir inlet = bedCase.Air().At(0);
        for (int step = 0; step < 30; step++)
        {
            double before = bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;
            bed.Step(900, inlet, inlet);
            double lost = setup.DryMassKgPerM2 * (before - bed.MeanTissueDryBasis - bed.MeanSurfaceDryBasis);
            double gained = 900 * bed.DryAirKgPerSM2 * (bed.ExhaustHumidityRatio - inlet.HumidityRatio);
            Assert.InRange(gained / lost, 1 - 1e-9, 1 + 1e-9);
        }
    }

    [Fact]
    public void A_turn_reverses_the_bed_and_keeps_its_water()
    {
        BedCase bedCase = BedCase.Read("bed-06");
        var bed = new LeafBed(bedCase.Setup(BedResolution.Search));
        bed.Step(3600, bedCase.Air().At(0), bedCase.Air().At(0));
        double[] before = [.. bed.TissueDryBasis];
        double mean = bed.MeanTissueDryBasis;

        bed.Turn();

        Assert.Equal(mean, bed.MeanTissueDryBasis, 1e-12);
        // β = 0.5: half of what the layer at the other end had, half of the mean.
        Assert.Equal(0.5 * before[^1] + 0.5 * mean, bed.TissueDryBasis[0], 1e-12);
    }

    [Fact]
    public void Saturated_air_takes_nothing()
    {
        BedCase bedCase = BedCase.Read("bed-06");
        BedSetup setup = bedCase.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        double w = 0.03;

        bed.Step(3600, new(15, w), new(15, w));

        Assert.Equal(Moisture.DryBasis(setup.Leaf.TissueMoistureWetBasis), bed.MeanTissueDryBasis, 1e-12);
    }

    private static DryingTrace Run(BedCase bedCase, BedResolution resolution)
    {
        PlenumSchedule air = bedCase.Air();
        return TrialWither.Run(bedCase.Setup(resolution), new(air, air, TurnRule.Every(bedCase.TurnHours, 40), bedCase.TargetDryBasis, 0, 40));
    }
}
