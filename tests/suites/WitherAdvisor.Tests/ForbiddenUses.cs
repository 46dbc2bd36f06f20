using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace WitherAdvisor.Tests;

/// <summary>What a compiled assembly uses that a pure library may not: read from its metadata, so no use can hide.</summary>
public static class ForbiddenUses
{
    // A namespace ending in a dot forbids all below it; a name forbids that type; a name and member that member.
    private static readonly string[] Forbidden =
    [
        "System.IO.", "System.Net.", "System.Threading.", "System.Diagnostics.", "System.Reflection.", "System.Data.",
        "System.Security.", "System.Runtime.InteropServices.", "System.Runtime.Loader.", "System.Text.Json.", "System.Xml.",
        "Microsoft.",
        "System.Random", "System.Console", "System.Environment", "System.TimeProvider", "System.AppContext",
        "System.AppDomain", "System.Activator", "System.GC", "System.TimeZoneInfo",
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today",
        "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow", "System.DateTimeOffset.get_LocalDateTime",
        "System.DateTimeOffset.ToLocalTime", "System.DateTime.ToLocalTime", "System.Guid.NewGuid", "System.Guid.CreateVersion7",
    ];

    // Written by the compiler, not by us: attributes on what it makes, and what it puts into iterators and lock-free events.
    private static readonly string[] MadeByTheCompiler =
    [
        "System.Environment.get_CurrentManagedThreadId", "System.Diagnostics.DebuggerBrowsableState",
        "System.Runtime.InteropServices.CollectionsMarshal", "System.Runtime.InteropServices.ImmutableCollectionsMarshal",
        "System.Runtime.InteropServices.MemoryMarshal", "System.Runtime.InteropServices.InAttribute",
    ];

    /// <summary>Assemblies referenced, by name.</summary>
    public static IReadOnlyList<string> References(string assemblyFile) =>
        Read(assemblyFile, metadata =>
            metadata.AssemblyReferences.Select(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name)));

    /// <summary>Forbidden types and members used, and native methods declared, by full name.</summary>
    public static IReadOnlyList<string> In(string assemblyFile) =>
        Read(assemblyFile, metadata => Uses(metadata).Where(IsForbidden).Concat(NativeMethods(metadata)));

    private static IReadOnlyList<string> Read(string assemblyFile, Func<MetadataReader, IEnumerable<string>> read)
    {
        using PEReader assembly = new(File.OpenRead(assemblyFile));
        return [.. read(assembly.GetMetadataReader()).Distinct().Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Uses(MetadataReader metadata)
    {
        foreach (MemberReferenceHandle handle in metadata.MemberReferences)
        {
            MemberReference member = metadata.GetMemberReference(handle);
            if (TypeName(metadata, member.Parent) is string type)
            {
                yield return $"{type}.{metadata.GetString(member.Name)}";
            }
        }

        // Types that are only held or passed on, with no member of theirs called.
        foreach (TypeReferenceHandle handle in metadata.TypeReferences)
        {
            yield return TypeName(metadata, handle)!;
        }
    }

    private static IEnumerable<string> NativeMethods(MetadataReader metadata) =>
        metadata.MethodDefinitions.Select(metadata.GetMethodDefinition)
            .Where(method => !method.GetImport().Module.IsNil)
            .Select(method => $"native method {metadata.GetString(method.Name)}");

    private static string? TypeName(MetadataReader metadata, EntityHandle handle) => handle.Kind switch
    {
        HandleKind.TypeReference => TypeName(metadata, metadata.GetTypeReference((TypeReferenceHandle)handle)),
        HandleKind.TypeSpecification => GenericTypeName(metadata, (TypeSpecificationHandle)handle),
        _ => null,
    };

    private static string TypeName(MetadataReader metadata, TypeReference type) =>
        type.ResolutionScope.Kind == HandleKind.TypeReference
            ? $"{TypeName(metadata, type.ResolutionScope)}.{metadata.GetString(type.Name)}"
            : $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";

    private static string? GenericTypeName(MetadataReader metadata, TypeSpecificationHandle handle)
    {
        BlobReader signature = metadata.GetBlobReader(metadata.GetTypeSpecification(handle).Signature);
        bool isGeneric = signature.ReadSignatureTypeCode() == SignatureTypeCode.GenericTypeInstance;
        if (!isGeneric)
        {
            return null;
        }

        signature.ReadByte(); // class or value type
        return TypeName(metadata, signature.ReadTypeHandle());
    }

    private static bool IsForbidden(string use) =>
        Forbidden.Any(entry => Covers(entry, use))
        && !MadeByTheCompiler.Any(entry => Covers(entry, use))
        && !IsAttribute(use)
        && use is not "System.Environment"; // its members are judged one by one

    private static bool Covers(string entry, string use) =>
        use == entry || use.StartsWith(entry.EndsWith('.') ? entry : entry + ".", StringComparison.Ordinal);

    private static bool IsAttribute(string use) =>
        use.Split('.').Any(part => part.EndsWith("Attribute", StringComparison.Ordinal));
}
