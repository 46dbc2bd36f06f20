using WitherAdvisor.Coefficients;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>What is true of one loft and its leaf, all its nights.</summary>
/// <param name="Site">Its coefficients, airflow factor among them.</param>
/// <param name="Groups">Logarithm of g_0 and moisture (wet basis) by which leaf of a cultivar and standard parts from them.</param>
/// <param name="WantedDifferenceK">Hygrometric difference it holds, K.</param>
public sealed record HiddenLoft(
    WitherCoefficients Site, IReadOnlyDictionary<(string, LeafStandard), (double Skin, double Moisture)> Groups, double WantedDifferenceK)
{
    private const double ShortStyleK = 7.2;
    private const double LongStyleK = 3.1;

    private static readonly string[] Cultivars = ["invented A", "invented B", "invented C"];
    private static readonly LeafStandard[] Standards = [LeafStandard.Fine, LeafStandard.Medium];

    /// <summary>Drawn about the defaults, within the range of each coefficient.</summary>
    /// <param name="wider">Factor on every spread: 1 where sites differ from the defaults as those say.</param>
    public static HiddenLoft Draw(SplitMix64 random, double wider = 1)
    {
        WitherCoefficients c = new();
        CoefficientSpreads spreads = c.Spreads;
        double Hidden(string name, double spread, bool relative = true)
        {
            Coefficient known = CoefficientCatalogue.All.Single(one => one.Name == name);
            while (true)
            {
                double off = random.Around(0, spread * wider);
                double value = relative ? known.Default * Math.Exp(off) : known.Default + off;
                if (value >= known.Low && value <= known.High)
                {
                    return value;
                }
            }
        }

        WitherCoefficients site = c with
        {
            CuticularConductanceMPerS = Hidden(nameof(c.CuticularConductanceMPerS), spreads.CuticularConductance),
            BoundaryLayerConductanceMPerS = Hidden(nameof(c.BoundaryLayerConductanceMPerS), spreads.BoundaryLayerConductance),
            SurfaceCapacityKgPerKg = Hidden(nameof(c.SurfaceCapacityKgPerKg), spreads.SurfaceCapacity),
            SurfaceRetention = Hidden(nameof(c.SurfaceRetention), spreads.SurfaceRetention),
            TurnBlend = Hidden(nameof(c.TurnBlend), spreads.TurnBlend, relative: false),
            DroughtMoistureWetBasis = Hidden(nameof(c.DroughtMoistureWetBasis), spreads.DroughtMoistureWetBasis, relative: false),
            DroughtToWetMoistureGain = Hidden(nameof(c.DroughtToWetMoistureGain), spreads.DroughtToWetMoistureGain, relative: false),
            AirflowFactor = Hidden(nameof(c.AirflowFactor), spreads.Airflow),
        };
        return new(site, Parted(random, wider), random.NextFraction() < 0.7 ? ShortStyleK : LongStyleK);
    }

    /// <summary>A loft of which every coefficient lies so many spreads from the default, all toward faster or all toward slower withers.</summary>
    public static HiddenLoft Apart(SplitMix64 random, double spreads, bool faster)
    {
        WitherCoefficients c = new();
        CoefficientSpreads s = c.Spreads;
        double way = faster ? spreads : -spreads;
        return new(
            c with
            {
                CuticularConductanceMPerS = c.CuticularConductanceMPerS * Math.Exp(way * s.CuticularConductance),
                BoundaryLayerConductanceMPerS = c.BoundaryLayerConductanceMPerS * Math.Exp(way * s.BoundaryLayerConductance),
                SurfaceCapacityKgPerKg = c.SurfaceCapacityKgPerKg * Math.Exp(-way * s.SurfaceCapacity),
                SurfaceRetention = c.SurfaceRetention * Math.Exp(-way * s.SurfaceRetention),
                TurnBlend = c.TurnBlend + way * s.TurnBlend,
                DroughtMoistureWetBasis = c.DroughtMoistureWetBasis - way * s.DroughtMoistureWetBasis,
                AirflowFactor = Math.Exp(way * s.Airflow),
            },
            Parted(random, 1),
            ShortStyleK);
    }

    /// <summary>Leaf of one trough: half of it of the first cultivar.</summary>
    public static (string Cultivar, LeafStandard Standard) DrawLeaf(SplitMix64 random) => (
        Cultivars[random.NextFraction() < 0.5 ? 0 : random.NextFraction() < 0.6 ? 1 : 2],
        Standards[random.NextFraction() < 0.7 ? 0 : 1]);

    private static Dictionary<(string, LeafStandard), (double Skin, double Moisture)> Parted(SplitMix64 random, double wider)
    {
        var groups = new Dictionary<(string, LeafStandard), (double, double)>();
        foreach (string cultivar in Cultivars)
        {
            foreach (LeafStandard standard in Standards)
            {
                groups.Add((cultivar, standard), (random.Around(0, 0.10 * wider), random.Around(0, 0.005 * wider)));
            }
        }

        return groups;
    }
}
