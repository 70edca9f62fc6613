/* SIMD building block shared by native C (16 float lanes, AVX-512) and WASM (4 float lanes, simd128).
   One independent xoshiro128++ stream per lane, Box-Muller in float32 with short polynomials. */
#ifndef VEC_H
#define VEC_H
#include <stdint.h>
#ifdef __wasm__
#include <wasm_simd128.h>
#define VL 4
#else
#include <immintrin.h>
#define VL 16
#endif
typedef float    vf __attribute__((vector_size(VL*4)));
typedef int32_t  vi __attribute__((vector_size(VL*4)));
typedef uint32_t vu __attribute__((vector_size(VL*4)));
typedef struct { vu s0,s1,s2,s3; } vrng;
#define AI static inline __attribute__((always_inline))
AI vu vrotl(vu x,int k){ return (x<<k)|(x>>(32-k)); }
AI vu vnext(vrng*r){
  vu res = vrotl(r->s0+r->s3,7)+r->s0, t = r->s1<<9;
  r->s2^=r->s0; r->s3^=r->s1; r->s1^=r->s2; r->s0^=r->s3; r->s2^=t; r->s3=vrotl(r->s3,11);
  return res;
}
AI uint32_t splitmix32(uint64_t*s){ uint64_t z=(*s+=0x9E3779B97F4A7C15ull); z=(z^(z>>30))*0xBF58476D1CE4E5B9ull; z=(z^(z>>27))*0x94D049BB133111EBull; return (uint32_t)((z^(z>>31))>>32); }
static void vseed(vrng*r,uint64_t seed){
  for(int i=0;i<VL;i++){ r->s0[i]=splitmix32(&seed); r->s1[i]=splitmix32(&seed); r->s2[i]=splitmix32(&seed); r->s3[i]=splitmix32(&seed)|1u; }
}
AI vf vset(float x){ vf v; for(int i=0;i<VL;i++) v[i]=x; return v; }
AI vf vsqrt(vf x){
#ifdef __wasm__
  return (vf)wasm_f32x4_sqrt((v128_t)x);
#elif defined(__AVX512F__)
  return (vf)_mm512_sqrt_ps((__m512)x);
#else /* a processor without AVX-512: the compiler splits the loop into the lanes it has */
  vf v; for(int i=0;i<VL;i++) v[i]=__builtin_sqrtf(x[i]); return v;
#endif
}
AI vf vsel(vi m,vf a,vf b){ return (vf)((((vi)a)&m)|(((vi)b)&~m)); }
AI vf vmin(vf a,vf b){ return vsel((vi)(a<b),a,b); }
AI vf vmax(vf a,vf b){ return vsel((vi)(a>b),a,b); }
/* Constants: as literals natively; in WASM read from memory (one broadcast load) because the engine rebuilds 128-bit literals at each use. */
#ifdef __wasm__
extern float vcst[32]; 
float vcst[32]={7.0376836292E-2f,-1.1514610310E-1f,1.1676998740E-1f,-1.2420140846E-1f,1.4249322787E-1f,-1.6668057665E-1f,2.0000714765E-1f,-2.4999993993E-1f,3.3333331174E-1f,
 -2.12194440e-4f,0.5f,0.693359375f,1.41421356f,1.0f,4.656612873077393e-10f,-2.0f,2.3283064365386963e-10f*1.5707963267948966f,-1.9515295891E-4f,8.3321608736E-3f,-1.6666654611E-1f,2.443315711809948E-5f,-1.388731625493765E-3f,4.166664568298827E-2f};
int32_t vcsi[8]={127,0x7fffff,0x3f800000,(int32_t)0x80000000};
#define C(i,v) ((vf)wasm_v128_load32_splat(&vcst[i]))
#define VS(v) ((vu)CI(3,0))
#define CI(i,v) ((vi)wasm_v128_load32_splat(&vcsi[i]))
#else
#define C(i,v) (v)
#define CI(i,v) (v)
#define VS(v) (v)
#endif
AI vf vlog(vf x){ /* x in (0,1]; single-precision log, polynomial of the classic single-precision form */
  vi b=(vi)x; vi e=(b>>23)-CI(0,127); vf m=(vf)((b&CI(1,0x7fffff))|CI(2,0x3f800000));
  vi big=(vi)(m>C(12,1.41421356f)); m=vsel(big,m*C(10,0.5f),m); e-=big; /* big is -1 when true */
  vf ef=__builtin_convertvector(e,vf); vf t=m-C(13,1.0f), z=t*t;
  vf y=C(0,7.0376836292E-2f)*t+C(1,-1.1514610310E-1f); y=y*t+C(2,1.1676998740E-1f); y=y*t+C(3,-1.2420140846E-1f); y=y*t+C(4,1.4249322787E-1f);
  y=y*t+C(5,-1.6668057665E-1f); y=y*t+C(6,2.0000714765E-1f); y=y*t+C(7,-2.4999993993E-1f); y=y*t+C(8,3.3333331174E-1f); y=y*t*z;
  y+=ef*C(9,-2.12194440e-4f); y-=C(10,0.5f)*z; return t+y+ef*C(11,0.693359375f);
}
AI vf vunif(vu u){ return (__builtin_convertvector((vi)(u>>1),vf)+C(10,0.5f))*C(14,4.656612873077393e-10f); } /* (0,1] */
AI void vnorm2(vrng*r,vf*a,vf*b){
  vu u1=vnext(r),u2=vnext(r);
  vf rad=vsqrt(C(15,-2.0f)*vlog(vunif(u1)));
  vf t=__builtin_convertvector((vi)(u2<<2),vf)*C(16,2.3283064365386963e-10f*1.5707963267948966f); vf z=t*t;
  vf s=((C(17,-1.9515295891E-4f)*z+C(18,8.3321608736E-3f))*z+C(19,-1.6666654611E-1f))*z*t+t;
  vf c=((C(20,2.443315711809948E-5f)*z+C(21,-1.388731625493765E-3f))*z+C(22,4.166664568298827E-2f))*z*z-C(10,0.5f)*z+C(13,1.0f);
  vi sw=((vi)(u2<<1))>>31; vf ss=vsel(sw,c,s), cc=vsel(sw,s,c);
  ss=(vf)(((vu)ss)^(u2&VS(0x80000000u))); cc=(vf)(((vu)cc)^((u2^(u2<<1))&VS(0x80000000u)));
  *a=rad*ss; *b=rad*cc;
}
#endif
