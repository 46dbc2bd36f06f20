using WitherAdvisor.Ambient;

namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>A case that may be true: how many standard deviations each uncertain input lies from what the plan takes.</summary>
internal readonly record struct UncertainDraw(
    double TissueMoisture = 0,
    double SurfaceWater = 0,
    double CuticularConductance = 0,
    double BoundaryLayerConductance = 0,
    double SurfaceCapacity = 0,
    double Airflow = 0,
    double PlenumSchedule = 0,
    double NightAir = 0)
{
    /// <summary>A point of the lattice. Held air and the night's own share a dimension: an hour has heat or has none.</summary>
    public static UncertainDraw FromLattice(double[] point) =>
        new(point[0], point[1], point[2], point[3], point[4], point[5], point[6], point[6]);
}
