using System.Globalization;
using Microsoft.OpenApi;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>What the check of requests goes by, in the words of JSON Schema.</summary>
internal static class ShapeSchema
{
    public static void Write(OpenApiSchema schema, Shape? shape)
    {
        switch (shape)
        {
            case NumberShape number:
                schema.Minimum = number.Least.ToString(CultureInfo.InvariantCulture);
                schema.Maximum = number.Most.ToString(CultureInfo.InvariantCulture);
                break;
            case TextShape text:
                schema.MinLength = 1;
                schema.MaxLength = text.Longest;
                schema.Pattern = text.Pattern;
                break;
            case ListShape list:
                schema.MinItems = list.Fewest;
                schema.MaxItems = list.Most;
                WriteItem(schema.Items, list.Item);
                break;
            default:
                break;
        }
    }

    private static void WriteItem(IOpenApiSchema? item, Shape shape)
    {
        // Items that are objects stand elsewhere in the document, with schemas of their own.
        if (item is OpenApiSchema schema)
        {
            Write(schema, shape);
        }
    }
}
