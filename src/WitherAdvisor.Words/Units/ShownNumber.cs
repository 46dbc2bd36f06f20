using WitherAdvisor.Documentation;

namespace WitherAdvisor.Words.Units;

/// <summary>A number of the model in a unit that reads well: percents for fractions, mm/s for conductances.</summary>
public sealed record ShownNumber(double Value, string Unit)
{
    // What is left of a product of decimals, so that 0.006 m/s shows as 6 mm/s.
    private const int DigitsThatCount = 12;
    private const double BigEnoughForWholes = 1000;
    private const double BigEnoughForTenths = 10;

    /// <summary>From the model's own number.</summary>
    /// <param name="value">In the model's own unit.</param>
    /// <param name="unit">Of the model: "1" for a fraction.</param>
    public static ShownNumber Of(double value, string unit) => unit switch
    {
        "1" => new(Math.Round(100 * value, DigitsThatCount), "%"),
        ModelConstant.MoisturePoints => new(Math.Round(100 * value, DigitsThatCount), "points"),
        "m/s" => new(Math.Round(1000 * value, DigitsThatCount), "mm/s"),
        _ => new(Math.Round(value, DigitsThatCount), unit),
    };

    /// <summary>"7.2 K", as it stands.</summary>
    public string Text => WithUnit($"{Value:0.####}");

    /// <summary>"78.7 %", rounded as nobody would read it finer.</summary>
    public string RoundedText => WithUnit(RoundedValue);

    /// <summary>The same with the unit as a language writes it.</summary>
    public string Rounded(Wordbook words) => (this with { Unit = words.OfCode("model_unit", Unit) }).RoundedText;

    /// <summary>The number of <see cref="RoundedText"/> alone.</summary>
    public string RoundedValue => Figures.Fixed(Value, Math.Abs(Value) switch
    {
        >= BigEnoughForWholes => 0,
        >= BigEnoughForTenths => 1,
        _ => 2,
    });

    private string WithUnit(string number) => Unit switch
    {
        "" => number,
        "points" when Value == 1 => $"{number} point",
        _ => $"{number} {Unit}",
    };
}
