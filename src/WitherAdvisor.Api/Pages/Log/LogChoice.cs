using System.Text;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Spells;
using WitherAdvisor.Store;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Log;

/// <summary>Which part of the log a person wants to see: dates of the site, spell, cultivar.</summary>
public sealed record LogChoice(FilledForm Form, OutcomeFilter Filter)
{
    public const string From = "from";
    public const string To = "to";
    public const string Spell = "spell";
    public const string Cultivar = "cultivar";

    private const int LongestName = 80;

    /// <summary>From the query of an address. What cannot be read is not filtered by, and said.</summary>
    public static LogChoice Read(IQueryCollection query, WallClock clock, Wordbook words)
    {
        Dictionary<string, string> typed = query.ToDictionary(field => field.Key, field => field.Value[0] ?? "", StringComparer.Ordinal);
        FormReader form = new(words, typed);
        DateTimeOffset? from = Midnight(form, From, words["log.loaded_from"], clock, 0);
        DateTimeOffset? to = Midnight(form, To, words["log.to"], clock, 1);
        SpellKind? spell = form.Choice<SpellKind>(Spell, words["log.spell"]);
        string? cultivar = form.Text(Cultivar, words["batch.cultivar"], LongestName);
        return new(form.Filled, new OutcomeFilter(from, to, spell, cultivar, NewestFirst: true));
    }

    /// <summary>The same choice as the interface takes it.</summary>
    public string ExportAddress(string site, string format)
    {
        StringBuilder address = new($"/v1/sites/{Uri.EscapeDataString(site)}/outcomes/export?format={format}");
        Put(address, From, Filter.From is { } from ? Rfc3339.Format(from) : null);
        Put(address, To, Filter.To is { } to ? Rfc3339.Format(to) : null);
        Put(address, Spell, Filter.Spell is { } spell ? KeptWord.Of(spell) : null);
        Put(address, Cultivar, Filter.Cultivar);
        return address.ToString();
    }

    private static DateTimeOffset? Midnight(FormReader form, string field, string label, WallClock clock, int daysLater)
    {
        string date = form.Typed(field);
        if (date.Length == 0)
        {
            return null;
        }

        DateTimeOffset? midnight = clock.Read(date, "00:00") ?? clock.Read(date, "01:00");
        if (midnight is null)
        {
            form.Refuse(field, label, form.Words["form.no_date"]);
        }

        return midnight?.AddDays(daysLater);
    }

    private static void Put(StringBuilder address, string name, string? value)
    {
        if (value is not null)
        {
            address.Append('&').Append(name).Append('=').Append(Uri.EscapeDataString(value));
        }
    }
}
