using System.Text;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>Makes a stranger's words fit to be shown and logged: short, on one line, without our key.</summary>
internal static class FeedText
{
    private const int MostCharacters = 200;

    public static string Clean(string words, string? key)
    {
        // A key may come back as it was sent in the address.
        string keyless = key is null ? words : words.Replace(key, "***").Replace(Uri.EscapeDataString(key), "***");
        var line = new StringBuilder();
        foreach (Rune rune in keyless.EnumerateRunes())
        {
            if (line.Length >= MostCharacters)
            {
                return line.Append('…').ToString();
            }

            line.Append(Rune.IsControl(rune) ? " " : rune.ToString());
        }

        return line.ToString().Trim();
    }
}
