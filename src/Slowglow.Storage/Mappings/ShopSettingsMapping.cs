using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Words;

namespace Slowglow.Storage.Mappings;

internal sealed class ShopSettingsMapping : IEntityTypeConfiguration<ShopSettings>
{
    public void Configure(EntityTypeBuilder<ShopSettings> builder)
    {
        builder.ToTable("settings");
        builder.HasKey(s => s.Id);
        builder.Property(s => s.Id).ValueGeneratedNever();
        builder.Property(s => s.Words).HasConversion<string>().HasMaxLength(20);
        builder
            .Property(s => s.Rules)
            .HasColumnName("rules")
            .HasConversion((ValueConverter)JsonText.Converter<ShopRules>(), JsonText.Comparer<ShopRules>());
    }
}
