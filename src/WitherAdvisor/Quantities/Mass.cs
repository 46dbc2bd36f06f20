namespace WitherAdvisor.Quantities;

/// <summary>A mass, not below 0.</summary>
public readonly record struct Mass
{
    /// <summary>Exact by definition (international yard and pound agreement, 1959; NIST SP 811, appendix B.9).</summary>
    public const double KilogramsPerPound = 0.45359237;

    private Mass(double kilograms)
    {
        if (!double.IsFinite(kilograms) || kilograms < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(kilograms), kilograms, "A mass is finite and not below 0.");
        }

        Kilograms = kilograms;
    }

    public double Kilograms { get; }

    public double Pounds => Kilograms / KilogramsPerPound;

    public static Mass FromKilograms(double kilograms) => new(kilograms);

    public static Mass FromPounds(double pounds) => new(pounds * KilogramsPerPound);
}
