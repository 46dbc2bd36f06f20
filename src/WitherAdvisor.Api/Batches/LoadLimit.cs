using WitherAdvisor.Fields;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Batches;

/// <summary>How much leaf a trough takes.</summary>
internal static class LoadLimit
{
    public static double MostKg(Trough trough) => trough.AreaM2 * trough.MostLoadKgPerM2;

    public static IEnumerable<FieldError> Check(double greenWeightKg, Trough trough, string field)
    {
        if (greenWeightKg > MostKg(trough))
        {
            yield return FieldError.Of(field, $"{greenWeightKg}",
                $"at most {MostKg(trough):0.##} kg on this trough: {trough.AreaM2} m² at {trough.MostLoadKgPerM2} kg/m²");
        }
    }
}
