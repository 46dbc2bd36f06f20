using System.Text;
using System.Text.Json.Nodes;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Tests.Http;

/// <summary>Whatever comes in, the service answers, and never with a failure of its own.</summary>
public sealed class AnyBodyTests(RunningService service)
{
    private static readonly string[] Nasty =
    [
        "null", "true", "0", "-0", "-1", "1", "1.5", "99", "1e-300", "1e308", "1e999", "-1e999", "NaN", "\"\"",
        "\"a\"", "\"12\"", "\"\\ud800\"", "\"\\u0000\"", "[]", "[[]]", "[1,2,3]", "{}", "{\"a\":1}", "{\"a\":1,\"a\":1}",
        "\"2026-03-01T13:00:00+05:30\"", "\"2026-03-01T13:00:00\"", "\"0001-01-01T00:00:00+14:00\"",
        "\"9999-12-31T23:59:59-14:00\"", "\"2026-03-01T13:00:00+18:00\"", "\"dripping\"", "\"long\"",
    ];

    [Property(MaxTest = 600)]
    public Property No_change_to_a_valid_body_makes_the_service_fail() => Prop.ForAll(
        Gen.Elements<RequestForm>(RequestForm.All).Zip(Changes()).ToArbitrary(),
        change => Run(() => SendChanged(change.Item1, change.Item2, FieldPlace.Of(change.Item1), (_, json) => json)));

    [Property(MaxTest = 600)]
    public Property No_values_that_fit_one_by_one_make_the_service_fail_together() => Prop.ForAll(
        Gen.Elements(RequestForm.Of("batch"), RequestForm.Of("advice"), RequestForm.Of("simulation")).Zip(Changes()).ToArbitrary(),
        change => Run(() => SendChanged(
            change.Item1, change.Item2,
            [.. FieldPlace.Of(change.Item1).Where(place => FittingValues.Of(place.Shape).Count > 0)], FittingValues.For)));

    [Property(MaxTest = 200)]
    public Property No_bytes_make_the_service_fail() => Prop.ForAll(
        Gen.Elements<RequestForm>(RequestForm.All).Zip(ArbMap.Default.GeneratorFor<byte[]>()).ToArbitrary(),
        sent => Run(() => SendBytes(sent.Item1, sent.Item2)));

    [Property(MaxTest = 200)]
    public Property No_text_in_path_or_query_makes_the_service_fail() => Prop.ForAll(
        ArbMap.Default.GeneratorFor<NonNull<string>>().Zip(ArbMap.Default.GeneratorFor<NonNull<string>>()).ToArbitrary(),
        text => Run(() => SendPath(text.Item1.Get, text.Item2.Get)));

    [Property(MaxTest = 100)]
    public Property No_CSV_makes_the_service_fail() => Prop.ForAll(
        Gen.Elements("time", "dry_bulb_c", ",", "\n", "\"", "\r\n", "1", "-5", "2026-03-01T13:00:00+05:30", "x", " ")
            .ListOf().Select(string.Concat).ToArbitrary(),
        csv => Run(() => SendCsv(csv)));

    private static Gen<List<(int Place, string Json)>> Changes() =>
        Gen.Choose(0, 10_000).Zip(Gen.Elements(Nasty)).NonEmptyListOf().Select(changes => changes.Take(4).ToList());

    private static bool Run(Func<Task<Reply>> send)
    {
        Reply reply = Task.Run(send).GetAwaiter().GetResult();
        Assert.True(reply.Status is >= 200 and < 500, reply.Text);
        return true;
    }

    private async Task<Reply> SendChanged(
        RequestForm form, List<(int Place, string Json)> changes,
        IReadOnlyList<FieldPlace> places, Func<Shape, string, string> value)
    {
        TestLoft loft = await service.SharedLoft.Value;
        JsonNode body = DocumentedExamples.Of(await service.Document.Value, form);
        string text = body.ToJsonString();
        foreach ((int place, string json) in changes)
        {
            FieldPlace changed = places[place % places.Count];
            text = Changed(text, changed, value(changed.Shape, json));
        }

        return await form.Send(loft, text);
    }

    private static string Changed(string text, FieldPlace place, string json)
    {
        try
        {
            return place.Replace(JsonNode.Parse(text)!, json);
        }
        catch (Exception gone) when (gone is System.Text.Json.JsonException or InvalidOperationException or NullReferenceException or ArgumentException)
        {
            // An earlier change took the place away, or is no JSON at all: that is a body too.
            return text;
        }
    }

    private async Task<Reply> SendBytes(RequestForm form, byte[] bytes)
    {
        TestLoft loft = await service.SharedLoft.Value;
        return await loft.Caller.SendBytes(form.Method, await form.Path(loft), bytes);
    }

    private async Task<Reply> SendCsv(string csv)
    {
        TestLoft loft = await service.SharedLoft.Value;
        return await loft.Caller.PostText(loft.Path + "/weather?kind=observed", csv, "text/csv");
    }

    private Task<Reply> SendPath(string path, string query)
    {
        string asked = Escaped(query);
        return service.Caller.Get($"/v1/sites/{Escaped(path)}/weather?kind={asked}&{asked}=1&from={asked}");
    }

    // A null character never gets this far: Kestrel answers it, and the test server throws at its caller.
    private static string Escaped(string text) =>
        Uri.EscapeDataString(Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text.Replace("\0", "", StringComparison.Ordinal))));
}
