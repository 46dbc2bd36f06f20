namespace WitherAdvisor.Loft.Importing;

/// <summary>A value of a line that is kept otherwise.</summary>
/// <param name="Column">Its name in the file.</param>
/// <param name="Said">As the line has it.</param>
/// <param name="Kept">As it is kept, written in the same way; empty where nothing is.</param>
public sealed record ColumnDifference(string Column, string Said, string Kept);
