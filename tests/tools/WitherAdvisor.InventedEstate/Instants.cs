using System.Globalization;

namespace WitherAdvisor.InventedEstate;

/// <summary>Times as RFC 3339 has them, with the site's offset.</summary>
public static class Instants
{
    public static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
}
