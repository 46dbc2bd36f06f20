namespace WitherAdvisor.Words.Units;

/// <summary>Numbers without a choice of unit, in words.</summary>
public static class Figures
{
    /// <summary>With so many decimals; the minus is the typographic one, so that no line breaks after it.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals);
        return text.TrimStart('-').Trim('0', '.').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }

    /// <summary>"2.4 h".</summary>
    public static string Hours(double hours) => $"{Fixed(hours, 1)} h";

    /// <summary>"24 kW", a tenth more below 10.</summary>
    public static string KiloWatts(double kiloWatts) => $"{Fixed(kiloWatts, kiloWatts < 10 ? 1 : 0)} kW";

    /// <summary>A fraction as "18 %".</summary>
    public static string Percent(double fraction, int decimals = 0) => $"{Fixed(fraction * 100, decimals)} %";

    /// <summary>"60.0 % moisture (wet basis)".</summary>
    public static string Moisture(Wordbook words, double wetBasis) => words.Say("figure.moisture", ("share", Percent(wetBasis, 1)));

    /// <summary>A spread between moistures, "2.7 points of moisture (wet basis)".</summary>
    public static string MoisturePoints(Wordbook words, double wetBasis) =>
        words.Say("figure.moisture_points", ("points", Fixed(wetBasis * 100, 1)));

    /// <summary>"8 mm", a tenth more below 10.</summary>
    public static string Millimetres(double millimetres) => $"{Fixed(millimetres, millimetres < 10 ? 1 : 0)} mm";
}
