using System.Globalization;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Tests.Http;

/// <summary>Every field of every request, given wrongly in every way: the problem names field, value and range.</summary>
public sealed class EveryFieldTests(RunningService service)
{
    public static TheoryData<string, string> Fields => Places(_ => true);

    public static TheoryData<string, string> RequiredFields => Places(place => place.Required);

    public static TheoryData<string, string> OptionalFields => Places(place => !place.Required && place.Steps[^1] is string);

    public static TheoryData<string, string> NumberFields => Places(place => place.Shape is NumberShape);

    public static TheoryData<string, string> TextFields => Places(place => place.Shape is TextShape);

    public static TheoryData<string, string> ListFields => Places(place => place.Shape is ListShape);

    public static TheoryData<string> Requests => [.. RequestForm.All.Select(form => form.Name)];

    [Theory]
    [MemberData(nameof(Requests))]
    public async Task The_documented_example_of_each_request_is_taken(string request)
    {
        (RequestForm form, TestLoft loft, JsonNode body) = await Prepare(request);
        Reply reply = await form.Send(loft, body.ToJsonString());
        Assert.True(reply.Status is 200 or 201, reply.Text);
    }

    [Theory]
    [MemberData(nameof(RequiredFields))]
    public async Task A_missing_required_field_is_named_with_what_is_allowed(string request, string field)
    {
        var error = await Refused(request, field, null);
        Assert.Null(error.Given);
    }

    [Theory]
    [MemberData(nameof(RequiredFields))]
    public async Task A_null_required_field_is_named(string request, string field) =>
        Assert.Equal("null", (await Refused(request, field, "null")).Given);

    [Theory]
    [MemberData(nameof(OptionalFields))]
    public async Task An_optional_field_may_be_null_and_may_be_left_out(string request, string field)
    {
        foreach (string? json in new[] { "null", null })
        {
            Reply reply = await Send(request, field, json);
            // Air without a dry bulb is refused as such, not for a field that is null.
            Assert.True(reply.Status is 200 or 201 || reply.Errors.All(error => error.Field != field), reply.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public async Task A_field_of_the_wrong_type_is_named(string request, string field)
    {
        foreach (string wrong in new[] { "true", "{\"surprise\": 1}", "[[]]" })
        {
            Reply reply = await Send(request, field, wrong);
            reply.ExpectProblem(400, "urn:witheradvisor:problem:invalid-input");
            Assert.Contains(reply.Errors, error => error.Field.StartsWith(field, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(NumberFields))]
    public async Task A_number_in_quotes_is_refused_with_its_range(string request, string field)
    {
        foreach (string quoted in new[] { "\"12\"", "\"NaN\"", "\"Infinity\"" })
        {
            var error = await Refused(request, field, quoted);
            Assert.Equal(quoted, error.Given);
            AssertNamesRange(request, field, error);
        }
    }

    [Theory]
    [MemberData(nameof(NumberFields))]
    public async Task NaN_and_Infinity_are_no_JSON_and_the_place_is_named(string request, string field)
    {
        foreach (string bare in new[] { "NaN", "Infinity", "-Infinity" })
        {
            Reply reply = await Send(request, field, bare);
            reply.ExpectProblem(400, "urn:witheradvisor:problem:malformed-body");
            Assert.Contains(field.Split('.', '[')[^1].TrimEnd(']').Trim('0'), (string)reply.Json["detail"]!);
        }
    }

    [Theory]
    [MemberData(nameof(NumberFields))]
    public async Task A_number_outside_its_range_is_named_with_value_and_range(string request, string field)
    {
        NumberShape range = (NumberShape)Place(request, field).Shape;
        double step = Math.Max(1e-6, (range.Most - range.Least) * 1e-6);
        foreach (double outside in new[] { range.Least - step, range.Most + step, -1e308, 1e308 })
        {
            string json = outside.ToString("R", CultureInfo.InvariantCulture);
            var error = await Refused(request, field, json);
            Assert.Equal(json, error.Given);
            AssertNamesRange(request, field, error);
        }

        Assert.Equal("1e999", (await Refused(request, field, "1e999")).Given);
    }

    [Theory]
    [MemberData(nameof(TextFields))]
    public async Task A_text_that_is_empty_blank_too_long_or_holds_control_characters_is_refused(string request, string field)
    {
        int longest = ((TextShape)Place(request, field).Shape).Longest;
        foreach (string wrong in new[] { "\"\"", "\"  \"", $"\"{new string('a', longest + 1)}\"", "\"a\\u0000b\"", "\"a\\nb\"" })
        {
            var error = await Refused(request, field, wrong);
            Assert.Contains(longest.ToString(CultureInfo.InvariantCulture), error.Allowed);
        }
    }

    [Theory]
    [MemberData(nameof(ListFields))]
    public async Task A_list_that_is_too_long_is_refused(string request, string field)
    {
        int most = ((ListShape)Place(request, field).Shape).Most;
        var error = await Refused(request, field, $"[{string.Join(',', Enumerable.Repeat("0", most + 1))}]");
        Assert.Equal($"{most + 1} items", error.Given);
    }

    private static TheoryData<string, string> Places(Func<FieldPlace, bool> wanted)
    {
        TheoryData<string, string> data = [];
        foreach (RequestForm form in RequestForm.All)
        {
            foreach (FieldPlace place in FieldPlace.Of(form).Where(wanted))
            {
                data.Add(form.Name, place.Path);
            }
        }

        return data;
    }

    private static FieldPlace Place(string request, string field) =>
        FieldPlace.Of(RequestForm.Of(request)).Single(place => place.Path == field);

    private static void AssertNamesRange(
        string request, string field, (string Field, string? Given, string Allowed, string Message) error)
    {
        NumberShape range = (NumberShape)Place(request, field).Shape;
        Assert.Contains(range.Least.ToString(CultureInfo.InvariantCulture), error.Allowed);
        Assert.Contains(range.Most.ToString(CultureInfo.InvariantCulture), error.Allowed);
        Assert.NotNull(range.Unit);
        Assert.EndsWith(range.Unit, error.Allowed);
        Assert.Contains(error.Given!, error.Message);
        Assert.Contains(error.Allowed, error.Message);
    }

    private async Task<(string Field, string? Given, string Allowed, string Message)> Refused(
        string request, string field, string? json)
    {
        Reply reply = await Send(request, field, json);
        return reply.ExpectInvalid(field).Errors.First(error => error.Field == field);
    }

    private async Task<Reply> Send(string request, string field, string? json)
    {
        (RequestForm form, TestLoft loft, JsonNode body) = await Prepare(request);
        return await form.Send(loft, Place(request, field).Replace(body, json));
    }

    private async Task<(RequestForm Form, TestLoft TestLoft, JsonNode Body)> Prepare(string request)
    {
        RequestForm form = RequestForm.Of(request);
        return (form, await service.SharedLoft.Value, DocumentedExamples.Of(await service.Document.Value, form));
    }
}
