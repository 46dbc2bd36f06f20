using Microsoft.AspNetCore.Antiforgery;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>A form as a browser sent it.</summary>
/// <param name="Typed">By field name; of a field sent twice the first.</param>
/// <param name="Genuine">Whether it carries the token of a page that this service drew for this browser.</param>
internal sealed record PostedForm(IReadOnlyDictionary<string, string> Typed, bool Genuine)
{
    public static async Task<PostedForm> Read(HttpContext http, IAntiforgery antiforgery, CancellationToken cancel)
    {
        try
        {
            if (!http.Request.HasFormContentType)
            {
                return new(new Dictionary<string, string>(StringComparer.Ordinal), false);
            }

            IFormCollection form = await http.Request.ReadFormAsync(cancel);
            Dictionary<string, string> typed = form.ToDictionary(field => field.Key, field => field.Value[0] ?? "", StringComparer.Ordinal);
            return new(typed, await antiforgery.IsRequestValidAsync(http));
        }
        catch (Exception failure) when (failure is InvalidDataException or BadHttpRequestException or IOException)
        {
            // Too much, cut off or not a form at all: nothing that one of our pages sends.
            return new(new Dictionary<string, string>(StringComparer.Ordinal), false);
        }
    }
}
