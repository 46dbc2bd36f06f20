using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.OpenApi;

public sealed class ApiDocumentTests(RunningService service)
{
    [Fact]
    public async Task The_committed_document_is_the_served_one()
    {
        string served = (await service.Caller.Get("/openapi/v1.json")).Expect(200).Text.ReplaceLineEndings("\n") + "\n";
        string path = Committed();
        if (Environment.GetEnvironmentVariable("UPDATE_OPENAPI") == "1")
        {
            await File.WriteAllTextAsync(path, served, TestContext.Current.CancellationToken);
        }

        string committed = await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken);
        Assert.True(committed == served, "openapi/witheradvisor.v1.json is not what the service serves: run this test with UPDATE_OPENAPI=1 and look at the change.");
    }

    [Fact]
    public async Task It_is_OpenAPI_3_1() => Assert.StartsWith("3.1.", (string)(await Document())["openapi"]!);

    [Fact]
    public async Task Every_operation_has_a_summary_and_its_problems()
    {
        foreach ((string path, JsonNode? methods) in (await Document())["paths"]!.AsObject())
        {
            foreach ((string method, JsonNode? operation) in methods!.AsObject())
            {
                Assert.False(string.IsNullOrEmpty((string?)operation!["summary"]), $"{method} {path} has no summary.");
                bool takesInput = operation["requestBody"] is not null || operation["parameters"] is not null;
                Assert.True(!takesInput || operation["responses"]!["400"] is not null, $"{method} {path} hides its 400.");
            }
        }
    }

    [Fact]
    public async Task Every_field_has_a_meaning_and_every_plain_one_an_example()
    {
        await EachField((name, field) =>
        {
            Assert.False(string.IsNullOrEmpty((string?)field["description"]), $"{name} has no description.");
            bool isObject = field["allOf"] is not null || field["anyOf"] is not null || field["items"]?["$ref"] is not null;
            Assert.True(isObject || field["examples"] is not null, $"{name} has no example.");
        });
    }

    [Fact]
    public async Task Every_number_has_a_unit_but_for_the_ones_whose_unit_stands_beside_them()
    {
        string[] unitBeside =
        [
            "NoticeResponse.allowed", "NoticeResponse.reached", "ReliefResponse.amount",
            "CoefficientResponse.value", "CoefficientResponse.least", "CoefficientResponse.most",
            "CardCoefficientResponse.value", "CardCoefficientResponse.least", "CardCoefficientResponse.most",
            "ConstantResponse.value", "RangeResponse.least", "RangeResponse.most",
            "LearnedResponse.prior", "LearnedResponse.before", "LearnedResponse.after", "LearnedResponse.low", "LearnedResponse.high",
            "InputSensitivityResponse.low_value", "InputSensitivityResponse.planned_value", "InputSensitivityResponse.high_value",
        ];
        await EachField((name, field) => Assert.True(
            !Types(field).Contains("number") || field["x-unit"] is not null || unitBeside.Contains(name),
            $"{name} has no unit."));
    }

    [Fact]
    public async Task Every_number_and_text_of_a_request_has_its_range()
    {
        await EachField((name, field) =>
        {
            if (!name.Split('.')[0].EndsWith("Request", StringComparison.Ordinal))
            {
                return;
            }

            JsonNode value = field["items"] ?? field;
            Assert.True(!Types(value).Contains("number") || (value["minimum"] is not null && value["maximum"] is not null), $"{name} has no range.");
            bool isPlainText = Types(value).Contains("string") && value["format"] is null && value["enum"] is null;
            Assert.True(!isPlainText || value["maxLength"] is not null, $"{name} has no length.");
        });
    }

    [Fact]
    public async Task A_field_that_may_be_null_says_so_in_a_way_that_null_fits()
    {
        await EachField((name, field) =>
        {
            Assert.NotEqual("null", (string?)(field["type"] as JsonValue));
            bool nullable = Types(field).Contains("null");
            Assert.True(!nullable || field["enum"] is null || field["enum"]!.AsArray().Any(item => item is null), $"{name} lists no null.");
        });
    }

    [Fact]
    public async Task Names_are_snake_case() => await EachField((name, _) =>
        Assert.Matches("^[a-z][a-z0-9]*(_[a-z0-9]+)*$", name.Split('.')[1]));

    [Fact]
    public async Task There_are_pages_to_read_and_try_it() =>
        Assert.Contains("swagger", (await service.Caller.Get("/swagger/index.html")).Expect(200).Text);

    private static IReadOnlyList<string> Types(JsonNode field) => field["type"] switch
    {
        JsonArray several => [.. several.Select(type => (string)type!)],
        JsonValue one => [(string)one!],
        _ => [],
    };

    private async Task EachField(Action<string, JsonNode> check)
    {
        int fields = 0;
        foreach ((string schema, JsonNode? shape) in (await Document())["components"]!["schemas"]!.AsObject())
        {
            foreach ((string name, JsonNode? field) in (shape!["properties"] ?? new JsonObject()).AsObject())
            {
                fields++;
                check($"{schema}.{name}", field!);
            }
        }

        Assert.True(fields > 150, $"Only {fields} fields were looked at.");
    }

    private Task<JsonNode> Document() => service.Document.Value;

    private static string Committed([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../openapi/witheradvisor.v1.json"));
}
