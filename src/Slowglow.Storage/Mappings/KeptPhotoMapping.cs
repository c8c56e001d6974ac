using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Storage.Records;

namespace Slowglow.Storage.Mappings;

internal sealed class KeptPhotoMapping : IEntityTypeConfiguration<KeptPhoto>
{
    public void Configure(EntityTypeBuilder<KeptPhoto> builder)
    {
        builder.ToTable("photos");
        builder.HasKey(p => p.File);
        builder.Property(p => p.File).HasMaxLength(80);
        builder.Property(p => p.Kind).HasConversion<string>().HasMaxLength(20);
    }
}
