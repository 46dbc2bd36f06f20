using System.Reflection;
using WitherAdvisor.Fields;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>A column of the log, read off <see cref="LogRow"/>.</summary>
/// <param name="Field">Name, type and range.</param>
/// <param name="Meaning">What it tells.</param>
internal sealed record LogColumn(FieldShape Field, MeaningAttribute Meaning)
{
    public static ObjectShape Shape { get; } = new([.. InOrder().Select(Shapes.Of)]);

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<LogColumn> All { get; } =
        [.. Shape.Fields.Select(field => new LogColumn(field, field.Property.GetCustomAttribute<MeaningAttribute>()!))];

    public string Name => Field.Name;

    public Type Type => Nullable.GetUnderlyingType(Field.Property.PropertyType) ?? Field.Property.PropertyType;

    /// <summary>Whether a spreadsheet might take what people wrote in it for a formula.</summary>
    public bool IsText => Type == typeof(string) && !Meaning.Numbers;

    public string? UnitSymbol => Type == typeof(double) || Meaning.Numbers ? Unit.OfName(Name)?.Symbol : null;

    public object? Read(LogRow row) => Field.Property.GetValue(row);

    // Reflection lists what a record adds before what it inherits; the log begins with the batch.
    private static IEnumerable<PropertyInfo> InOrder() =>
        new[] { typeof(LogBatch), typeof(LogOutcome), typeof(LogRow) }.SelectMany(part => part.GetProperties(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly));
}
