using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Pages.Weather.Picture;

/// <summary>Spells by day as a band; days of one spell that follow each other are one stretch.</summary>
internal static class SpellBand
{
    /// <summary>Wide enough for a letter.</summary>
    private const double RoomForLetter = 9;

    public static IReadOnlyList<WeatherStretch> Of(Wordbook words, IReadOnlyList<ReviewDay> days, DateTimeOffset end, Func<DateTimeOffset, double> x)
    {
        var band = new List<WeatherStretch>();
        ReviewDay[] shown = [.. days.Where(day => day.From < end)];
        for (int at = 0; at < shown.Length;)
        {
            int start = at;
            SpellKind? kind = shown[at].Spell.Kind;
            while (at < shown.Length && shown[at].Spell.Kind == kind)
            {
                at++;
            }

            double from = Math.Max(x(shown[start].From), WeatherFrame.Left);
            double to = Math.Min(x(shown[at - 1].To), WeatherFrame.Right);
            band.Add(new(from, to, Text(words, kind, to - from), Name(kind)));
        }

        return band;
    }

    private static string Text(Wordbook words, SpellKind? kind, double width)
    {
        string word = SpellWording.Short(words, kind);
        const double UnitsPerLetter = 7;
        return width > word.Length * UnitsPerLetter ? word : width > RoomForLetter ? word[..1] : "";
    }

    private static string Name(SpellKind? kind) => kind switch
    {
        SpellKind.Wet => "wet",
        SpellKind.DryWindy => "windy",
        SpellKind.Ordinary => "ordinary",
        _ => "hole",
    };
}
