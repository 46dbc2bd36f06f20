using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>The library's own bed run through the same wither, at a resolution of choice.</summary>
public static class FastBed
{
    private const double SecondsPerHour = 3600;

    public static BedCourse Solve(BedWither wither, BedResolution resolution)
    {
        var bed = new LeafBed(new BedSetup(
            wither.Leaf, wither.DryMassKgPerM2, wither.AirflowM3PerSM2, wither.PressurePa,
            new SaturationTable(wither.PressurePa, MoistAirFormulation.RealGas), wither.Coefficients,
            resolution.Layers, resolution.LongestStepS));
        var inlet = new InletAir(wither.PlenumC, wither.HumidityRatio);
        int steps = (int)Math.Ceiling(SecondsPerHour / resolution.LongestStepS);
        double? reached = null;
        double water = Water(bed);
        var byHour = new List<double> { Moisture.WetBasis(water) };
        for (int hour = 0; hour < BedWither.HorizonHours && reached is null; hour++)
        {
            if (hour > 0 && hour % wither.TurnEveryHours == 0)
            {
                bed.Turn();
            }

            for (int i = 0; i < steps; i++)
            {
                bed.Step(SecondsPerHour / steps, inlet, inlet);
                double after = Water(bed);
                if (reached is null && after <= wither.TargetDryBasis)
                {
                    reached = hour + (i + Math.Max(water - wither.TargetDryBasis, 0) / (water - after)) / steps;
                }

                water = after;
            }

            byHour.Add(Moisture.WetBasis(water));
        }

        return new(reached, byHour);
    }

    private static double Water(LeafBed bed) => bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;
}
