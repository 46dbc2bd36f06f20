using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>A wither made ready for the fit: its observations in one order, its air and turns as the bed takes them.</summary>
internal sealed class Occasion
{
    /// <summary>Saturation hardly feels the pressure (Buck 1996): occasions this near share a table, Pa.</summary>
    private const double SharedTablePa = 100;

    private readonly AirByHour air;

    public Occasion(ObservedWither wither, int group, MeasurementErrors errors, Dictionary<double, SaturationTable> tables)
    {
        Wither = wither;
        Group = group;
        OwnLeafShare = errors.LeafShare;
        AirErrorK = wither.AirIsMeasured ? errors.MeasuredAirK : errors.SetAirK;
        Air = [.. wither.AirByHour];
        air = new(Air);
        TurnHours = [.. wither.TurnHours.Where(hour => hour > 0 && hour < wither.HoursOnTrough).Order()];
        Observations = [.. Findings(wither, errors), .. Readings(wither, errors)];
        OfBed = Observations.Count(one => one.Kind < ObservationKind.LoadingSurface);
        double rounded = Math.Round(wither.PressurePa / SharedTablePa) * SharedTablePa;
        if (!tables.TryGetValue(rounded, out SaturationTable? table))
        {
            table = new(rounded, MoistAirFormulation.RealGas);
            tables.Add(rounded, table);
        }

        Saturation = table;
    }

    public ObservedWither Wither { get; }

    /// <summary>Place of its leaf among the groups; below 0 where it belongs to none.</summary>
    public int Group { get; }

    /// <summary>Those of the bed by hour, then those of loading.</summary>
    public Observation[] Observations { get; }

    /// <summary>How many of them the bed answers.</summary>
    public int OfBed { get; }

    public double OwnLeafShare { get; }

    public double AirErrorK { get; }

    public InletAir[] Air { get; }

    public double[] TurnHours { get; }

    public SaturationTable Saturation { get; }

    public AirByHour AirWarmer(double kelvin) => kelvin == 0 ? air : new(Air, kelvin);

    private static IEnumerable<Observation> Findings(ObservedWither wither, MeasurementErrors errors)
    {
        WitherFindings found = wither.Found;
        double end = wither.HoursOnTrough;
        foreach (SampleWeighing weighing in (found.Weighings ?? []).Where(one => one.Hour > 0 && one.Hour <= end).OrderBy(one => one.Hour))
        {
            yield return new(ObservationKind.SampleShare, weighing.WeightShare, errors.SampleShare, weighing.Hour);
        }

        if (found.WitheredWeightKg is { } withered)
        {
            yield return new(ObservationKind.Outturn, Math.Log(withered / wither.GreenWeightKg), errors.OutturnRelative, end);
        }

        if (found.MoistureWetBasis is { } oven)
        {
            yield return new(ObservationKind.FinalMoisture, oven, errors.OvenMoistureWetBasis, end);
        }

        if (found.ByHeight is { BottomWetBasis: { } bottom, TopWetBasis: { } top })
        {
            yield return new(ObservationKind.TopOverBottom, top - bottom, Math.Sqrt(2) * errors.HeightMoistureWetBasis, end);
        }
    }

    private static IEnumerable<Observation> Readings(ObservedWither wither, MeasurementErrors errors)
    {
        if (wither.AtLoading.SurfaceWaterKgPerKg is { } weighed)
        {
            yield return new(ObservationKind.LoadingSurface, weighed, errors.SurfaceWaterKgPerKg, 0);
        }

        if (wither.AtLoading.MoistureWetBasis is { } oven)
        {
            yield return new(ObservationKind.LoadingMoisture, oven, errors.LoadingMoistureWetBasis, 0);
        }
    }
}
