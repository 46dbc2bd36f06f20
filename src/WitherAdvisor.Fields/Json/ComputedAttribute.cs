namespace WitherAdvisor.Fields.Json;

/// <summary>Numbers of this answer are computed, and are rounded to the decimals of their unit when written.</summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class ComputedAttribute : Attribute;
