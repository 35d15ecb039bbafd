using System.Security.Cryptography;
using System.Text;

namespace Progression.Exchange.Fhir;

/// <summary>
/// Names of entries, made from what an entry is of: the same case and revision give the same names, so that who receives a bundle twice knows it again.
/// Version 8 of RFC 9562, by the way of its appendix B.2: SHA-256 over a name space and a name.
/// </summary>
internal static class FhirUuid
{
    /// <summary>The name space of our entries; drawn at random once.</summary>
    private static readonly Guid Ours = new("7a6e0f52-3c1b-4d0e-9a35-5d1f6b0c82e7");

    /// <summary>The name of an entry: "urn:uuid:…".</summary>
    /// <param name="parts">What it is of, for instance the kind of resource, the code of the case and the revision.</param>
    public static string Urn(params ReadOnlySpan<string> parts) => $"urn:uuid:{Of(Ours, string.Join('|', parts!))}";

    /// <summary>The UUID of a name in a name space.</summary>
    public static Guid Of(Guid space, string name)
    {
        byte[] hash = SHA256.HashData([.. space.ToByteArray(bigEndian: true), .. Encoding.UTF8.GetBytes(name)]);
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash.AsSpan(0, 16), bigEndian: true);
    }
}
