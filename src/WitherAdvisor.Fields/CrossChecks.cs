using System.Collections;

namespace WitherAdvisor.Fields;

/// <summary>Asks a request and all that is in it whether its fields fit each other.</summary>
internal static class CrossChecks
{
    public static IEnumerable<FieldError> Of(object? input, Shape shape) => (input, shape) switch
    {
        (null, _) => [],
        (_, ObjectShape fields) => Inside(input, fields).Concat((input as ICrossChecked)?.CrossCheck() ?? []),
        (IEnumerable items, ListShape list) => Inside(items, list),
        _ => [],
    };

    private static IEnumerable<FieldError> Inside(object input, ObjectShape fields) =>
        fields.Fields.SelectMany(field =>
            Of(field.Property.GetValue(input), field.Shape).Select(error => error.Inside(field.Name)));

    private static IEnumerable<FieldError> Inside(IEnumerable items, ListShape list) =>
        items.Cast<object>().SelectMany((item, index) =>
            Of(item, list.Item).Select(error => error.Inside(FieldPath.Item("", index))));
}
